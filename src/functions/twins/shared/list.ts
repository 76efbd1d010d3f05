/** Arguments that take a range: how many figures there are, and that nothing else stands there. */
import type { TwinArgument } from "../../twin";
import type { Reading } from "./reading";
import { or, plainSpaces, when, wrong, missing } from "./text";

export interface RangeText {
  readonly range: TwinArgument;
  /** A helper cell: how many are filled in; an error where one is wrong. */
  readonly count: string;
}

/** The cells of a range in reading order. */
export const cellsOf = (range: TwinArgument): string[] =>
  Array.from({ length: range.rows * range.columns }, (_, position) =>
    range.cell(Math.floor(position / range.columns), position % range.columns),
  );

/** How many cells of a range hold anything. */
export const filledIn = (range: string): string =>
  `SUMPRODUCT((TRIM(${plainSpaces(range)})<>"")*(${range}<>0))`;

/** How many figures of a range are above 0 and within the argument's limits. */
export const allowedIn = (reading: Reading, name: string, range: string): string => {
  const { limits } = reading.reader(name);
  return `SUMPRODUCT((${range}>${limits?.from ?? "0"})*(${range}<=${limits?.to ?? "0"}))`;
};

/** In a range some programs take TRUE and FALSE for figures: each cell is asked by itself. */
export const hasLogical = (range: TwinArgument): string =>
  or(...cellsOf(range).map((cell) => `ISLOGICAL(${cell})`));

/** A required range with at least one figure. */
export function listOf(reading: Reading, name: string): RangeText {
  const range = reading.call.argument(name);
  if (!range) {
    reading.meaning(name, undefined);
    return { range: { text: "0", rows: 1, columns: 1, cell: () => "0" }, count: "1" };
  }
  const { text } = range;
  const allowed = allowedIn(reading, name, text);
  const isWrong = or(hasLogical(range), `${filledIn(text)}>${allowed}`);
  const count = reading.call.helper(
    `${name}: how many`,
    when(isWrong, wrong, when(`${allowed}=0`, missing, allowed)),
  );
  return { range, count };
}

/** The mean of the figures: cells with 0 are not filled in and add nothing to the sum. */
export const meanOf = ({ range, count }: RangeText): string => `SUM(${range.text})/${count}`;

/** The smallest figure: in order of size, the zeros of cells not filled in come first. */
export const smallestOf = ({ range, count }: RangeText): string =>
  `SMALL(${range.text},COUNT(${range.text})-${count}+1)`;
