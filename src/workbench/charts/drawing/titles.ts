/** The title of a chart and those of its axes, and the room they leave. */
import type { ChartPicture } from "../../../xlsx/file-chart";
import type { Room, Words } from "./drawing";
import { inLines, usual } from "./letters";

const titleSize = 14;
const titleLine = 18;
const axisTitle = 16;

export const titleOf = ({ title, isNamedBySeries, groups }: ChartPicture): string => {
  const series = groups.flatMap((group) => group.series);
  const only = series.length === 1 ? series[0]?.name?.text : undefined;
  return title?.text ?? (isNamedBySeries ? (only ?? "") : "");
};

export function titled(picture: ChartPicture, room: Room): { words: Words[]; room: Room } {
  const width = room.right - room.left;
  const lines = inLines(titleOf(picture), width, 2, titleSize);
  const middle = (room.left + room.right) / 2;
  const words = lines.map((text, index): Words => ({
    x: middle,
    y: room.top + 13 + index * titleLine,
    text,
    anchor: "middle",
    size: titleSize,
    isBold: true,
  }));
  return {
    words,
    room: { ...room, top: room.top + lines.length * titleLine + (lines[0] ? 4 : 0) },
  };
}

export type Edge = "bottom" | "left" | "right";

/** The title of an axis along an edge, and the room that is left. */
export function axisTitled(text: string, edge: Edge, room: Room): { words: Words[]; room: Room } {
  if (text.trim() === "") return { words: [], room };
  const isUpright = edge !== "bottom";
  const long = isUpright ? room.bottom - room.top : room.right - room.left;
  const [line = ""] = inLines(text, long, 1, usual);
  const at = {
    bottom: { x: (room.left + room.right) / 2, y: room.bottom - 3 },
    left: { x: room.left + 11, y: (room.top + room.bottom) / 2 },
    right: { x: room.right - 3, y: (room.top + room.bottom) / 2 },
  }[edge];
  const words: Words = {
    ...at,
    text: line,
    anchor: "middle",
    size: usual,
    isBold: true,
    ...(isUpright ? { turned: -90 } : {}),
  };
  const less = {
    bottom: { bottom: room.bottom - axisTitle - 2 },
    left: { left: room.left + axisTitle },
    right: { right: room.right - axisTitle },
  }[edge];
  return { words: [words], room: { ...room, ...less } };
}
