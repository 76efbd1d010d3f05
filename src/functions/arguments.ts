/**
 * Cells in: the readers an argument of a worksheet function can have. A reader knows its words, its
 * unit and limits, whether it may be left out and whether it takes a range; the type of what it reads
 * is inferred from it. Everything said about an argument anywhere comes from its reader.
 */
import type { Quantity, Unit } from "../core/quantity/quantity";
import { type Outcome, isProblem, problem } from "../core/problem/problem";
import { allowedWords, type Limits } from "../core/reference/limits";
import type { Slot } from "../core/titration/pairs";
import { type Cell, isNotFilledIn } from "./cells/cell";
import { described, errorProblem, figure } from "./cells/figure";
import { type Grid, placeIn, readGrid } from "./cells/grid";

export interface Argument<T> {
  /** What it is, for help and tooltips: one line. */
  readonly says: string;
  /** The unit its figures are in; "" for words. */
  readonly unit: Unit | "";
  /** What it may be, in words. */
  readonly allowed: string;
  /** The same as data, for figures. */
  readonly limits?: Limits;
  /** The words it takes, if it takes words. */
  readonly words?: readonly string[];
  /** Takes a range (dimensionality matrix). */
  readonly list: boolean;
  /** Set when it may be left out: what that means, "20" or "oleic" or "the solvent was neutralised". */
  readonly whenLeftOut?: string;
  /** Listed among the required arguments, though leaving it out has a meaning (blanks). */
  readonly listedAsRequired?: boolean;
  read(given: unknown, argument: string): Outcome<T>;
}

/** A range with its gaps kept, since replicates pair by position. */
export interface List<U extends Unit> {
  readonly rows: number;
  readonly columns: number;
  readonly slots: readonly Slot<Quantity<U>>[];
  readonly filled: readonly Quantity<U>[];
}

/** The single cell of a one-cell argument. */
function oneCell(given: unknown, argument: string): Outcome<Cell> {
  const { rows, columns, cells } = readGrid(given);
  const [cell] = cells;
  if (cell === undefined) return { kind: "empty" };
  return cells.length > 1 ? problem({ code: "not-one-cell", argument, rows, columns }) : cell;
}

/** A reader of one cell: `filled` turns what is there into the value, `missing` what is not. */
export function single<T>(
  about: Omit<Argument<T>, "list" | "read">,
  filled: (cell: Cell, argument: string) => Outcome<T>,
  missing: (argument: string) => Outcome<T>,
): Argument<T> {
  return {
    ...about,
    list: false,
    read(given, argument) {
      const cell = oneCell(given, argument);
      if (isProblem(cell)) return cell;
      if (isNotFilledIn(cell)) return missing(argument);
      if (cell.kind === "error") return errorProblem(cell.error, argument);
      return filled(cell, argument);
    },
  };
}

const notYet =
  (called: string) =>
  (argument: string): Outcome<never> =>
    problem({ code: "not-filled-in", argument, called });

/** A required figure. `called` completes "No ... yet". */
export const number = <U extends Unit>(
  limit: Limits<U>,
  called: string,
  says: string,
): Argument<Quantity<U>> =>
  single(
    { says, unit: limit.unit, allowed: allowedWords(limit), limits: limit },
    (cell, argument) => figure(cell, limit, argument),
    notYet(called),
  );

/** A figure that may be left out, with the value it then has. */
export const optionalNumber = <U extends Unit, D extends Quantity<U> | undefined>(
  limit: Limits<U>,
  whenLeftOut: string,
  value: D,
  says: string,
): Argument<Quantity<U> | D> =>
  single<Quantity<U> | D>(
    { says, unit: limit.unit, allowed: allowedWords(limit), limits: limit, whenLeftOut },
    (cell, argument) => figure(cell, limit, argument),
    () => value,
  );

/** A figure that may be left out, and then is what it usually is. */
export const usualNumber = <U extends Unit>(
  limit: Limits<U>,
  usually: Quantity<U>,
  says: string,
): Argument<Quantity<U>> => optionalNumber(limit, usually.toString(), usually, says);

/** A whole number, or undefined where it is not filled in. */
export const optionalWhole = (
  limit: Limits<"fraction">,
  whenLeftOut: string,
  says: string,
): Argument<Quantity<"fraction"> | undefined> => {
  const reader = optionalNumber(limit, whenLeftOut, undefined, says);
  return {
    ...reader,
    read(given, argument) {
      const found = reader.read(given, argument);
      if (found === undefined || isProblem(found) || found.isInteger()) return found;
      return problem({ code: "not-whole", argument, given: found });
    },
  };
};

/** Every figure of a range, gaps kept; the first that is wrong is the problem. */
export function figures<U extends Unit>(
  grid: Grid,
  limit: Limits<U>,
  argument: string,
): Outcome<List<U>> {
  const slots: Slot<Quantity<U>>[] = [];
  const filled: Quantity<U>[] = [];
  for (const [position, cell] of grid.cells.entries()) {
    if (isNotFilledIn(cell)) {
      slots.push(null);
      continue;
    }
    const place = grid.cells.length > 1 ? placeIn(grid, position) : undefined;
    const value = figure(cell, limit, argument, place);
    if (isProblem(value)) return value;
    slots.push(value);
    filled.push(value);
  }
  return { rows: grid.rows, columns: grid.columns, slots, filled };
}

/** A range of figures, at least one of them filled in. Cells not filled in are ignored. */
export const list = <U extends Unit>(
  limit: Limits<U>,
  called: string,
  says: string,
): Argument<List<U>> => ({
  says,
  unit: limit.unit,
  allowed: allowedWords(limit),
  limits: limit,
  list: true,
  read(given, argument) {
    const found = figures(readGrid(given), limit, argument);
    if (isProblem(found) || found.filled.length > 0) return found;
    return problem({ code: "not-filled-in", argument, called });
  },
});

/** A range of figures that may be left out altogether. */
export const optionalList = <U extends Unit>(
  limit: Limits<U>,
  whenLeftOut: string,
  says: string,
): Argument<List<U> | undefined> => ({
  says,
  unit: limit.unit,
  allowed: allowedWords(limit),
  limits: limit,
  list: true,
  whenLeftOut,
  read(given, argument) {
    const found = figures(readGrid(given), limit, argument);
    return isProblem(found) || found.filled.length > 0 ? found : undefined;
  },
});

/** A word: `named` finds what it names, `problemOf` may say more than that it is unknown. */
export interface WordChoice<T> {
  readonly words: readonly string[];
  readonly allowed: string;
  named(word: string): T | undefined;
}

/** A word that nothing answers to. */
export const unknownWord = (cell: Cell, argument: string, allowed: string): Outcome<never> =>
  problem({ code: "unknown-word", argument, given: described(cell), allowed });

/** A required word. */
export const word = <T>(choice: WordChoice<T>, called: string, says: string): Argument<T> =>
  single(
    { says, unit: "", allowed: choice.allowed, words: choice.words },
    (cell, argument) =>
      (cell.kind === "text" ? choice.named(cell.text) : undefined) ??
      unknownWord(cell, argument, choice.allowed),
    notYet(called),
  );
