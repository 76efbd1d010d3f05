/** The names of the series, each behind a sample of how it is drawn. */
import type { ChartPicture } from "../../../xlsx/file-chart";
import type { DrawnSeries, Room, Sample } from "./drawing";
import { fitted, usual, widthOf } from "./letters";
import { markPath } from "./marks";

export interface Named {
  readonly name: string;
  readonly colour: string;
  readonly isBar: boolean;
  readonly isJoined: boolean;
  readonly mark: string;
  readonly width: number;
  readonly dash: string | undefined;
}

const sample = 22;
const between = 14;
const lineHeight = 16;

function sampleAt({ isBar, isJoined, mark, ...look }: Named, x: number, y: number): DrawnSeries {
  const middle = y - 4;
  const [from, to] = [String(x), String(x + sample)];
  return {
    colour: look.colour,
    width: look.width,
    dash: look.dash,
    line: isJoined && !isBar ? `M${from},${String(middle)}H${to}` : "",
    marks: isBar ? "" : markPath(mark, x + sample / 2, middle),
    bars: isBar ? `M${String(x + 4)},${String(middle - 5)}h12v10h-12Z` : "",
  };
}

const itemWidth = (name: string): number => sample + 4 + widthOf(name);

function rowsOf(all: readonly Named[], room: number): Named[][] {
  const rows: Named[][] = [[]];
  let used = 0;
  for (const each of all) {
    const width = itemWidth(each.name);
    if (used > 0 && used + between + width > room) {
      rows.push([]);
      used = 0;
    }
    rows.at(-1)?.push(each);
    used += (used > 0 ? between : 0) + width;
  }
  return rows;
}

const named = (each: Named, x: number, y: number): Sample => ({
  ...sampleAt(each, x, y),
  name: { x: x + sample + 4, y, text: each.name, anchor: "start", size: usual },
});

export interface Legend {
  readonly samples: readonly Sample[];
  /** What is left of the room. */
  readonly room: Room;
}

/** In rows below or above. No more than a third of the height. */
function across(all: readonly Named[], room: Room, side: "b" | "t"): Legend {
  const width = room.right - room.left;
  const most = Math.max(1, Math.floor((room.bottom - room.top) / 3 / lineHeight));
  const fitting = all.map((each) => ({ ...each, name: fitted(each.name, width - sample - 4) }));
  const rows = rowsOf(fitting, width).slice(0, most);
  const height = rows.length * lineHeight;
  const first = side === "b" ? room.bottom - height + 12 : room.top + 12;
  const samples = rows.flatMap((row, index) => {
    const taken = row.reduce((sum, { name }) => sum + itemWidth(name) + between, -between);
    let x = room.left + (width - taken) / 2;
    return row.map((each) => {
      const placed = named(each, x, first + index * lineHeight);
      x += itemWidth(each.name) + between;
      return placed;
    });
  });
  const left = height + 6;
  return {
    samples,
    room:
      side === "b" ? { ...room, bottom: room.bottom - left } : { ...room, top: room.top + left },
  };
}

/** One below another at a side. No more than a third of the width. */
function beside(all: readonly Named[], room: Room, side: "l" | "r"): Legend {
  const third = (room.right - room.left) / 3;
  const fitting = all.map((each) => ({ ...each, name: fitted(each.name, third - sample - 4) }));
  const width = Math.max(...fitting.map(({ name }) => itemWidth(name)));
  const most = Math.max(1, Math.floor((room.bottom - room.top) / lineHeight));
  const shown = fitting.slice(0, most);
  const top = (room.top + room.bottom - shown.length * lineHeight) / 2 + 12;
  const x = side === "r" ? room.right - width : room.left;
  const left = width + 10;
  return {
    samples: shown.map((each, index) => named(each, x, top + index * lineHeight)),
    room:
      side === "r" ? { ...room, right: room.right - left } : { ...room, left: room.left + left },
  };
}

/** Narrower than that, a legend at the side leaves nothing for the picture. */
const narrow = 300;

export function legendIn(all: readonly Named[], room: Room, side: ChartPicture["legend"]): Legend {
  if (!side || all.length === 0) return { samples: [], room };
  if (side === "b" || side === "t") return across(all, room, side);
  return room.right - room.left < narrow ? across(all, room, "b") : beside(all, room, side);
}
