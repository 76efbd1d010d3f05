/** Arguments that take a range: how many figures there are, and that nothing else stands there. */
import { smallest } from "../../../core/exact/lists";
import type { Unit } from "../../../core/quantity/quantity";
import type { List } from "../../../functions/arguments";
import type { TwinArgument } from "../../../functions/twin";
import type { Reading } from "./reading";
import { constantOf } from "./constant";
import {
  always,
  figure,
  isEmpty,
  isWithin,
  missing,
  never,
  or,
  plainSpaces,
  when,
  wrong,
} from "./text";

export interface RangeText {
  readonly range: TwinArgument;
  /** A helper cell: how many are filled in; an error where one is wrong. */
  readonly count: string;
  /** The smallest figure. */
  readonly least: string;
}

/** The cells of a range in reading order. */
export const cellsOf = (range: Pick<TwinArgument, "rows" | "columns" | "cell">): string[] =>
  Array.from({ length: range.rows * range.columns }, (_, position) =>
    range.cell(Math.floor(position / range.columns), position % range.columns),
  );

/** A cell as a figure of its argument: empty where not filled in, an error where not allowed. */
export const checked = (reading: Reading, name: string, cell: string): string => {
  const { limits } = reading.reader(name);
  const figure = when(limits ? isWithin(cell, limits) : never, cell, wrong);
  // in LibreOffice FALSE is 0, and would be taken for a cell not filled in
  const isLogical = constantOf(cell) ? never : `ISLOGICAL(${cell})`;
  return when(isLogical, wrong, when(isEmpty(cell), '""', figure));
};

/** More cells than this are not asked one by one. */
const mostAsked = 40;

/**
 * How many cells of a range something holds for. Not all programs go through a range inside TRIM or
 * LOWER, so that each cell is asked by itself while they are few.
 */
export const howMany = (range: TwinArgument, holds: (cells: string) => string): string =>
  range.rows * range.columns > mostAsked
    ? `SUMPRODUCT(1*${holds(range.text)})`
    : cellsOf(range)
        .map((cell) => holds(cell))
        .join("+");

/** How many cells of a range hold anything. */
export const filledIn = (range: TwinArgument): string =>
  howMany(range, (cells) => `(TRIM(${plainSpaces(cells)})<>"")*(${cells}<>0)`);

/** How many figures of a range are above 0 and within the argument's limits. */
export const allowedIn = (reading: Reading, name: string, range: string): string => {
  const { limits } = reading.reader(name);
  return `SUMPRODUCT((${range}>${limits?.from ?? "0"})*(${range}<=${limits?.to ?? "0"}))`;
};

/**
 * In a range LibreOffice takes TRUE and FALSE for figures, so that each cell is asked by itself. Where
 * there are too many it is left to the comparison with the limits, which tells them elsewhere.
 */
export const hasLogical = (range: TwinArgument): string =>
  range.rows * range.columns > mostAsked
    ? never
    : or(
        ...cellsOf(range).map((cell) =>
          constantOf(cell)
            ? typeof constantOf(cell)?.value === "boolean"
              ? always
              : never
            : `ISLOGICAL(${cell})`,
        ),
      );

const none: RangeText = {
  range: { text: "0", rows: 1, columns: 1, cell: () => "0" },
  count: "1",
  least: "0",
};

/** A required range with at least one figure. */
export function listOf(reading: Reading, name: string): RangeText {
  const range = reading.call.argument(name);
  const known = range ? reading.constants(name, range) : reading.meaning(name, undefined);
  if (known?.isKnown) {
    const { filled } = (known.value as List<Unit> | undefined) ?? { filled: [] };
    if (!range || filled.length === 0) return none;
    return { range, count: String(filled.length), least: figure(smallest(filled)) };
  }
  if (!range) return none;
  const { text } = range;
  const allowed = allowedIn(reading, name, text);
  const isWrong = or(hasLogical(range), `${filledIn(range)}>${allowed}`);
  const count = reading.call.helper(
    `${name}: how many`,
    when(isWrong, wrong, when(`${allowed}=0`, missing, allowed)),
  );
  // In order of size, the zeros of cells not filled in come first.
  return { range, count, least: `SMALL(${text},COUNT(${text})-${count}+1)` };
}

/** The mean of the figures: cells with 0 are not filled in and add nothing to the sum. */
export const meanOf = ({ range, count }: RangeText): string =>
  range.rows * range.columns === 1 ? range.cell(0, 0) : `SUM(${range.text})/${count}`;
