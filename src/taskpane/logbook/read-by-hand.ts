/** A table taken for a logbook, or its headings read from another row, because a person said so. */
import { recogniseAt } from "../../adopt/recognising/recognise";
import { type FoundTable, foundTable, type ReadTable } from "./found-table";

/** What was said of the columns began from the old headings: it is asked anew. */
export const readFrom = ({ cells, guess }: FoundTable, headingRow: number): FoundTable =>
  foundTable({
    cells,
    guess: recogniseAt(cells, headingRow, guess.place, guess.commas),
    remembered: undefined,
    isByHand: true,
  });

/** One of the others among the logbooks, and shown. */
export function withOther(
  tables: readonly FoundTable[],
  others: readonly ReadTable[],
  other: number,
) {
  const table = others[other];
  if (!table) return {};
  return {
    tables: [...tables, foundTable({ ...table, isByHand: true })],
    others: others.filter((each) => each !== table),
    at: tables.length,
  };
}
