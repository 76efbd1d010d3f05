/**
 * The logbooks as they are now: rows and figures may be new since they were agreed to. What was agreed
 * holds as long as every heading that is used stands where it stood.
 */
import type { LogbookMapping } from "../../adopt/recognising/mapping";
import { recogniseAt, type TableGuess } from "../../adopt/recognising/recognise";
import type { FoundTable, ReadTable } from "./found-table";

const isSame = ({ mapping }: FoundTable, { guess }: ReadTable): boolean =>
  guess.sheet === mapping.sheet &&
  guess.place.headingRow === mapping.place.headingRow &&
  guess.place.firstColumn === mapping.place.firstColumn;

const holds = ({ columns }: LogbookMapping, guess: TableGuess): boolean =>
  columns.every(
    ({ column, heading, role }) =>
      role === "other" ||
      guess.columns.some((each) => each.column === column && each.heading === heading),
  );

/** The agreed columns in a table that may have grown; new columns are not used. */
const moved = (mapping: LogbookMapping, guess: TableGuess): LogbookMapping => ({
  ...mapping,
  place: guess.place,
  columns: guess.columns.map(
    ({ column, heading }) =>
      mapping.columns.find((each) => each.column === column && each.heading === heading) ?? {
        column,
        heading,
        role: "other",
        unit: undefined,
      },
  ),
});

/** A table whose headings a person pointed at, read anew from the same row of the sheet as it is now. */
function byHand({ isByHand, mapping, guess }: FoundTable, read: readonly ReadTable[]) {
  const sheet = read.find(
    (each) => each.guess.sheet === mapping.sheet && each.guess.isAcross === guess.isAcross,
  );
  if (!isByHand || !sheet) return undefined;
  const { headingRow } = mapping.place;
  return { ...sheet, guess: recogniseAt(sheet.cells, headingRow, mapping.place, mapping.commas) };
}

export const refreshed = (
  tables: readonly FoundTable[],
  read: readonly ReadTable[],
): readonly FoundTable[] =>
  tables.map((table) => {
    const now = read.find((each) => isSame(table, each)) ?? byHand(table, read);
    if (!now || !holds(table.mapping, now.guess)) return { ...table, isAgreed: false };
    const { guess, cells } = now;
    return { ...table, guess, cells, mapping: moved(table.mapping, guess) };
  });
