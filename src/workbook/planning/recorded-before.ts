/** Is this titration in the logbook already? Same date, same lot, same readings. */
import type { RowValue } from "../record/row-values";
import { placeOf } from "./headings";
import { type Logbook, readCell } from "./snapshot";

const telling = [
  "Date",
  "Lot",
  ...[1, 2, 3, 4, 5, 6].map((place) => `Titre ${String(place)} mL`),
  ...[1, 2, 3].map((place) => `Blank ${String(place)} mL`),
];

/** The sheet's row that holds it, counted from 1 as a person does; undefined when none does. */
export function recordedBefore(logbook: Logbook, values: readonly RowValue[]): number | undefined {
  const { headings, block } = logbook.table;
  const compared = telling.flatMap((heading) => {
    const column = placeOf(heading, headings);
    if (column === undefined) return [];
    return [{ column, value: values.find((each) => each.heading === heading)?.value ?? "" }];
  });
  const isSame = (row: number): boolean =>
    compared.every(({ column, value }) => readCell(logbook, row, column).value === value);
  for (let row = block.rows - 1; row >= 1; row -= 1) {
    if (isSame(row)) return block.row + row + 1;
  }
  return undefined;
}
