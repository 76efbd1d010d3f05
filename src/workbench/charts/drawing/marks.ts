/** The marks of points, and how series are told apart that say nothing of themselves. */
import type { ChartSeries } from "../../../xlsx/file-chart";
import { place } from "./drawing";

const colours = ["#0b5b65", "#b4530a", "#4b3f8f", "#8a1c3b", "#2f6b2f", "#5f5f5f"];
const shapes = ["circle", "square", "diamond", "triangle", "x", "plus"];

const turn = <T>(list: readonly T[], at: number, otherwise: T): T =>
  list[at % list.length] ?? otherwise;

export const colourOf = ({ colour, place: at }: ChartSeries): string =>
  colour ?? turn(colours, at, "#444444");

export const markOf = ({ mark, place: at }: ChartSeries): string =>
  mark === undefined || mark === "auto" ? turn(shapes, at, "circle") : mark;

const dashes: Readonly<Record<string, string>> = {
  dash: "6 4",
  dashDot: "6 3 1.5 3",
  dot: "1.5 3",
  lgDash: "9 4",
  lgDashDot: "9 3 1.5 3",
  lgDashDotDot: "9 3 1.5 3 1.5 3",
  sysDash: "4 2",
  sysDashDot: "4 2 1.5 2",
  sysDashDotDot: "4 2 1.5 2 1.5 2",
  sysDot: "1.5 2",
};

export const dashOf = ({ dash }: ChartSeries): string | undefined =>
  dash === undefined ? undefined : dashes[dash];

const joined = (points: readonly (readonly [number, number])[]): string =>
  `M${points.map(([x, y]) => `${place(x)},${place(y)}`).join("L")}`;

/** A path around a point. */
export function markPath(shape: string, x: number, y: number, r = 3.2): string {
  const at = (across: number, up: number) => [x + across * r, y - up * r] as const;
  switch (shape) {
    case "none":
      return "";
    case "square":
      return `${joined([at(-0.9, -0.9), at(0.9, -0.9), at(0.9, 0.9), at(-0.9, 0.9)])}Z`;
    case "diamond":
      return `${joined([at(0, 1.3), at(1.3, 0), at(0, -1.3), at(-1.3, 0)])}Z`;
    case "triangle":
      return `${joined([at(0, 1.2), at(1.1, -0.9), at(-1.1, -0.9)])}Z`;
    case "x":
    case "star":
      return joined([at(-1, -1), at(1, 1)]) + joined([at(-1, 1), at(1, -1)]);
    case "plus":
      return joined([at(-1.2, 0), at(1.2, 0)]) + joined([at(0, -1.2), at(0, 1.2)]);
    case "dash":
      return joined([at(-1.2, 0), at(1.2, 0)]);
    default: {
      const across = place(2 * r);
      const arc = `a${place(r)},${place(r)} 0 1,`;
      return `M${place(x - r)},${place(y)}${arc}0 ${across},0${arc}0 -${across},0Z`;
    }
  }
}
