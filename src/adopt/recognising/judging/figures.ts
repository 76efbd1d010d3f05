/** Rows of figures compared: alike, in one ratio, one as a straight line of another. */
import { median } from "../numbers-of-column";

export type Figures = readonly (number | undefined)[];

/** Fewer rows tell nothing of a column that no word names. */
const leastRows = 5;
const nearlyAll = 0.85;

type Pair = readonly [number, number];

const pairsOf = (one: Figures, other: Figures): Pair[] =>
  one.flatMap((a, at): Pair[] => {
    const b = other[at];
    return a === undefined || b === undefined ? [] : [[a, b]];
  });

const mostly = (all: readonly boolean[]): boolean =>
  all.length >= leastRows && all.filter((each) => each).length >= nearlyAll * all.length;

export const valuesOf = (figures: Figures): number[] =>
  figures.filter((each): each is number => each !== undefined);

export const isVaried = (figures: Figures): boolean => new Set(valuesOf(figures)).size >= 4;

export const isOneFigure = (figures: Figures): boolean =>
  valuesOf(figures).length >= leastRows && new Set(valuesOf(figures)).size === 1;

export const each = (
  one: Figures,
  other: Figures | undefined,
  of: (a: number, b: number) => number,
): Figures =>
  one.map((a, at) => {
    const b = other?.[at];
    const made = a === undefined || b === undefined ? undefined : of(a, b);
    return made !== undefined && Number.isFinite(made) ? made : undefined;
  });

/** The same in nearly all rows, within a share of itself or half a digit. */
export const isAlike = (own: Figures, should: Figures, share: number, half = 0): boolean =>
  mostly(
    pairsOf(own, should).map(([a, b]) => Math.abs(a - b) <= Math.max(half, share * Math.abs(b))),
  );

/** Nearly all rows lie between two shares of the other's. */
export const isBetween = (
  own: Figures,
  of: Figures,
  [least, most]: readonly [number, number],
): boolean => mostly(pairsOf(own, of).map(([a, b]) => b > 0 && a / b >= least && a / b <= most));

/** The ratio that nearly all rows have. */
export function ratioOf(own: Figures, to: Figures, share: number): number | undefined {
  const ratios = pairsOf(own, to).flatMap(([a, b]) => (a > 0 && b > 0 ? [a / b] : []));
  const middle = median(ratios);
  return mostly(ratios.map((ratio) => Math.abs(ratio / middle - 1) <= share)) ? middle : undefined;
}

/** How far its ratio to another wanders from row to row, as a share of itself. */
export function spreadOf(own: Figures, to: Figures): number {
  const ratios = pairsOf(own, to).flatMap(([a, b]) => (a > 0 && b > 0 ? [a / b] : []));
  const middle = median(ratios);
  const off = ratios.map((ratio) => Math.abs(ratio / middle - 1));
  return off.reduce((sum, each) => sum + each, 0) / off.length;
}

export interface Line {
  readonly slope: number;
  readonly at0: number;
}

/** A straight line through nearly all rows, by the middle of all slopes; undefined where there is none. */
export function lineOf(own: Figures, along: Figures, share: number): Line | undefined {
  const pairs = pairsOf(own, along);
  if (pairs.length < leastRows) return undefined;
  const slopes = pairs.flatMap(([y, x], at) =>
    pairs.slice(at + 1).flatMap(([y2, x2]) => (x === x2 ? [] : [(y2 - y) / (x2 - x)])),
  );
  const slope = median(slopes);
  const at0 = median(pairs.map(([y, x]) => y - slope * x));
  const isOn = pairs.map(([y, x]) => Math.abs(y - slope * x - at0) <= share * Math.abs(y));
  return Number.isFinite(slope) && mostly(isOn) ? { slope, at0 } : undefined;
}
