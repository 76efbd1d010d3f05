/** How well strangers' logbooks are read: columns right, left open, wrong, and wrong while called sure. */
import { recogniseSheet } from "../../../src/adopt/recognising/recognise";
import { sureFrom } from "../../../src/adopt/recognising/sure";
import { type Book, type BookKind, bookOf, type HandId } from "./book";
import type { Truth } from "./laid";
import type { Nonsense } from "./nonsense";

export interface Miss {
  readonly book: Book;
  readonly heading: string;
  readonly wanted: string;
  readonly got: string;
  readonly isSure: boolean;
}

export interface Measured {
  columns: number;
  right: number;
  /** A role where nobody knows better: it is asked about. */
  open: number;
  wrong: number;
  wrongAndSure: number;
  readonly misses: Miss[];
}

const nothingMeasured = (): Measured => ({
  columns: 0,
  right: 0,
  open: 0,
  wrong: 0,
  wrongAndSure: 0,
  misses: [],
});

/** @param counts which columns are looked at */
function measureBook(book: Book, into: Measured, counts: (truth: Truth) => boolean): void {
  const tables = book.sheets.flatMap((cells) => recogniseSheet(cells));
  for (const truth of book.truth) {
    if (!counts(truth)) continue;
    const at = (place: (typeof tables)[number]["place"]): boolean =>
      truth.headingRow >= (place.groupRow ?? place.headingRow) &&
      truth.headingRow <= place.firstRow &&
      truth.column >= place.firstColumn &&
      truth.column <= place.lastColumn;
    const found = tables.find(
      ({ sheet, place, isAcross }) =>
        sheet === truth.sheet && (isAcross === true) === truth.isAcross && at(place),
    );
    const guess = found?.columns.find(({ column }) => column === truth.column);
    const role = guess?.role ?? "other";
    into.columns += 1;
    const isUnitWrong =
      truth.unit !== undefined && guess?.unit !== undefined && guess.unit !== truth.unit;
    const isRight = truth.roles.includes(role) && (role === "other" || !isUnitWrong);
    if (isRight) {
      into.right += 1;
      continue;
    }
    const isSure = role !== "other" && (guess?.score ?? 0) >= sureFrom;
    if (role === "other") into.open += 1;
    else into.wrong += 1;
    if (isSure) into.wrongAndSure += 1;
    into.misses.push({
      book,
      heading: truth.heading,
      wanted: `${truth.roles[0] ?? ""} ${truth.unit ?? ""}`.trim(),
      got: guess ? `${role} ${guess.unit ?? ""}`.trim() : "no table",
      isSure,
    });
  }
}

export function measureKind(
  kind: BookKind,
  seeds: number,
  first = 1,
  by: HandId = "first",
  nonsense?: Nonsense,
): Measured {
  const into = nothingMeasured();
  for (let seed = first; seed < first + seeds; seed += 1)
    measureBook(
      bookOf(kind, seed, by, nonsense),
      into,
      ({ isNonsense }) => !nonsense || isNonsense === true,
    );
  return into;
}
