/** Is this record in the logbook already? The columns that tell it apart hold the same. */
import { headingsOf, type TableShape } from "../../tables/column";
import type { RowValue } from "../../tables/row-values";
import { placeOf } from "../headings";
import { type Logbook, readCell } from "../snapshot";

/** The sheet's row that holds it, counted from 1 as a person does; undefined when none does. */
export function recordedBefore(
  logbook: Logbook,
  shape: TableShape,
  values: readonly RowValue[],
): number | undefined {
  const { headings, block } = logbook.table;
  const compared = headingsOf(shape, "tells").flatMap((heading) => {
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
