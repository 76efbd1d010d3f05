/** What stands across a chart, days, figures or categories, and the words along it. */
import type { Room, Stroke, Words } from "./drawing";
import { place } from "./drawing";
import { categoryWords } from "./categories";
import { fitted, usual, widthOf } from "./letters";
import { scaleFor } from "./scale";
import type { Across } from "./series";
import type { Sides } from "./sides";

/** Room at the ends of an axis, for half a mark. */
const edge = 6;
const labelGap = 6;

/** Marks there is room for, each so many pixels from the next. */
export const marksFor = (pixels: number, each: number): number =>
  Math.max(2, Math.min(12, Math.floor(pixels / each)));

/** Days and figures across: all of them, and the format of the first. */
function acrossFigures({ up }: Sides) {
  const pointed = up.flatMap(({ groups }) => groups.flatMap((group) => group.pointed));
  const values = pointed.flatMap(({ points }) =>
    points.flatMap(({ across, to }) => (to === undefined ? [] : [across])),
  );
  const format = pointed.find(({ series }) => series.across?.format)?.series.across?.format;
  return { values, format };
}

const isDayFormat = (format: string | undefined): boolean =>
  format !== undefined && /[dy]/i.test(format.replace(/"[^"]*"|\[[^\]]*\]|\\.|general/gi, ""));

function closest(values: readonly number[]): number {
  const sorted = [...new Set(values)].sort((a, b) => a - b);
  return sorted.reduce(
    (least, value, index) =>
      index === 0 ? least : Math.min(least, value - (sorted[index - 1] ?? value)),
    Infinity,
  );
}

export interface Below extends Across {
  readonly words: readonly Words[];
  readonly strokes: readonly Stroke[];
  readonly height: number;
}

/** The axis of figures or days across, in a room whose height is not known yet. */
export function figuresBelow(sides: Sides, room: Room, base: number): Below {
  const { values, format } = acrossFigures(sides);
  const axis = sides.acrossAxis;
  const isDates = sides.across === "dates" || isDayFormat(axis?.format ?? format);
  const hasBars = sides.up.some(({ groups }) =>
    groups.some(({ group }) => group.kind === "column"),
  );
  const days = hasBars ? Math.min(31, closest(values)) : 0;
  const [low, high] = values.reduce(
    ([from, to], value) => [Math.min(from, value), Math.max(to, value)],
    [Infinity, -Infinity],
  );
  const padded = hasBars && low <= high ? [low - days / 2, high + days / 2] : values;
  const range = [room.left + edge, room.right - edge] as const;
  const scale = scaleFor({
    axis,
    values: padded,
    fromZero: false,
    format,
    isDates,
    range,
    marks: marksFor(room.right - room.left, isDates ? 84 : 62),
  });
  const perDay = Math.abs(scale.at(low + 1) - scale.at(low));
  const isShown = !axis?.isHidden;
  let free = -Infinity;
  const words = scale.ticks.flatMap(({ at, label }): Words[] => {
    const half = widthOf(label) / 2;
    const x = Math.min(Math.max(at, room.left - 20 + half), room.right + edge - half);
    if (!isShown || x - half < free) return [];
    free = x + half + 6;
    return [{ x, y: base + 16, text: label, anchor: "middle", size: usual }];
  });
  const strokes = scale.ticks.map(({ at }): Stroke =>
    axis?.hasLines
      ? { is: "grid", path: `M${place(at)},${place(room.top)}V${place(base)}` }
      : { is: "axis", path: `M${place(at)},${place(base)}v4` },
  );
  return {
    at: scale.at,
    band: Number.isFinite(days) && days > 0 ? perDay * days : perDay,
    words,
    strokes,
    height: isShown ? 20 : 4,
  };
}

export function categoriesBelow(
  sides: Sides,
  words: readonly string[],
  room: Room,
  base: number,
): Below {
  const width = room.right - room.left;
  const band = width / Math.max(1, words.length);
  const isReversed = sides.acrossAxis?.isReversed === true;
  const at = (index: number) =>
    isReversed ? room.right - (index + 0.5) * band : room.left + (index + 0.5) * band;
  const isShown = !sides.acrossAxis?.isHidden;
  const chosen = categoryWords(isShown ? words : [], width);
  return {
    at,
    band,
    words: chosen.shown.map(([index, text]): Words => ({
      x: at(index) + (chosen.turned ? 3 : 0),
      y: base + 16,
      text,
      anchor: chosen.turned ? "end" : "middle",
      size: usual,
      ...(chosen.turned ? { turned: -45 } : {}),
    })),
    strokes: [],
    height: chosen.height + 6,
  };
}

/** Names of lying bars at the left of the room, one above another, no wider than so many pixels. */
export function categoriesBeside(
  sides: Sides,
  words: readonly string[],
  room: Room,
  widest: number,
): Across & { readonly words: readonly Words[] } {
  const band = (room.bottom - room.top) / Math.max(1, words.length);
  const isReversed = sides.acrossAxis?.isReversed === true;
  const at = (index: number) =>
    isReversed ? room.top + (index + 0.5) * band : room.bottom - (index + 0.5) * band;
  const every = Math.max(1, Math.ceil(14 / band));
  const shown = sides.acrossAxis?.isHidden ? [] : words;
  return {
    at,
    band,
    words: shown.flatMap((word, index): Words[] => {
      const text = index % every === 0 ? fitted(word, widest) : "";
      const y = at(index) + 4;
      return text === "" ? [] : [{ x: room.left - labelGap, y, text, anchor: "end", size: usual }];
    }),
  };
}
