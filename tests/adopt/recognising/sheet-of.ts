/** A made sheet: values alone, without formulas or formats; short rows are filled up with empty cells. */
import type { LogbookValue, SheetCells } from "../../../src/adopt/recognising/sheet-cells";

export function sheetOf(values: readonly (readonly LogbookValue[])[]): SheetCells {
  const width = Math.max(...values.map((row) => row.length));
  const rows = values.map((row) => Array.from({ length: width }, (_, at) => row[at] ?? ""));
  const same = (text: string) => rows.map((row) => row.map(() => text));
  return {
    sheet: "Log",
    row: 0,
    column: 0,
    values: rows,
    formulas: same(""),
    formats: same("General"),
  };
}
