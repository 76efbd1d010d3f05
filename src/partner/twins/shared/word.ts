/**
 * Arguments that take a word: what the word stands for is looked up among the words of the entry's
 * own reader. SUMPRODUCT finds the place, since it knows no wildcards and takes any case; CHOOSE
 * takes the figure from there.
 */
import type { Exact } from "../../../core/exact/exact";
import type { NamedArgument } from "../../../functions/define";
import type { Given, Reading } from "./reading";
import { figure, isWithin, missing, plainSpaces, row, text, when, wrong } from "./text";

/** A figure that goes with the word, as text for the arithmetic. */
export interface Word<T> {
  /** Where it is known while the twin is written. */
  readonly known: T | undefined;
  /** `itself` says that a figure given in place of a word is this figure. */
  pick(label: string, of: (named: T) => Exact, itself?: boolean): string;
  /** Words that go with the word. */
  word(label: string, of: (named: T) => string): string;
}

interface Spaces {
  /** Spaces inside the word do not matter either. */
  readonly anywhere: boolean;
}

/** How the word of a cell compares: in small letters, without spaces around it. */
const comparable = (cell: string, spaces: Spaces): string =>
  spaces.anywhere
    ? `LOWER(SUBSTITUTE(${plainSpaces(cell)}," ",""))`
    : `LOWER(TRIM(${plainSpaces(cell)}))`;

/** TRIM also mends several spaces inside a word, which no word of ours has: then it is not found. */
const asWritten = (cell: string, spaces: Spaces): string =>
  spaces.anywhere ? "" : `ISNUMBER(FIND(TRIM(${plainSpaces(cell)}),${plainSpaces(cell)}))*`;

function lookup<T>(
  cell: string,
  { name, words = [], limits, whenLeftOut, read }: NamedArgument,
  of: (named: T) => string,
  itself: boolean,
  spaces: Spaces,
): string {
  const valueOf = (given: unknown): string => of(read(given, name) as T);
  const keys = words.map((word) =>
    (spaces.anywhere ? word.replaceAll(" ", "") : word).toLowerCase(),
  );
  const values = words.map(valueOf);
  const different = [...new Set(values)];
  const places = values.map((value) => String(different.indexOf(value) + 2));
  const empty = whenLeftOut === undefined ? missing : valueOf(undefined);
  const isEach = `(${comparable(cell, spaces)}=${row(keys.map(text))})`;
  const found = `${asWritten(cell, spaces)}SUMPRODUCT(${isEach}*${row(places)})`;
  const isBlank = `(TRIM(${plainSpaces(cell)})="")`;
  const byWord = `CHOOSE(1+${isBlank}+${found},${[wrong, empty, ...different].join(",")})`;
  const byFigure = limits
    ? when(isWithin(cell, limits), itself ? cell : valueOf(Number(limits.to)), wrong)
    : wrong;
  const noWord = when(`ISLOGICAL(${cell})`, wrong, when(`${cell}=0`, empty, byFigure));
  return when(`ISTEXT(${cell})`, byWord, noWord);
}

export function wordOf<T>(
  reading: Reading,
  name: string,
  spaces: Spaces = { anywhere: false },
): Word<T> {
  const given: Given = reading.one(name);
  const known = given.isKnown ? (given.value as T | undefined) : undefined;
  const asked = (label: string, of: (named: T) => string, itself: boolean): string => {
    if (given.isKnown) return known === undefined ? "0" : of(known);
    const formula = lookup(given.cell, reading.reader(name), of, itself, spaces);
    const cell = reading.call.helper(label, formula);
    reading.passOn(cell);
    return cell;
  };
  return {
    known,
    pick: (label, of, itself = false) => asked(label, (named) => figure(of(named)), itself),
    word: (label, of) => asked(label, (named) => text(of(named)), false),
  };
}
