/** A table whose titres stand together in one cell, with a column for each, beyond its last one. */
import { columnsOf, type LogbookMapping, type MappedColumn } from "../recognising/mapping";
import { endOf, heldCell, type LogbookValue, type SheetCells } from "../recognising/sheet-cells";
import { numberFromText } from "../recognising/typed-number";
import { figuresIn } from "./several-figures";

export interface Book {
  readonly mapping: LogbookMapping;
  readonly cells: SheetCells;
}

/** Cells that can be written into, wider by some columns. */
export function widened(cells: SheetCells, by: number): { cells: SheetCells; put: Put } {
  const more = <T>(rows: readonly (readonly T[])[], fill: T): T[][] =>
    rows.map((row) => [...row, ...Array.from({ length: by }, () => fill)]);
  const values = more<LogbookValue>(cells.values, "");
  const formulas = more(cells.formulas, "");
  const formats = more(cells.formats, "General");
  return {
    cells: { ...cells, values, formulas, formats },
    put: (row, column, value, format = "General") => {
      const r = row - cells.row;
      const c = column - cells.column;
      if (!values[r]) return;
      (values[r] as LogbookValue[])[c] = value;
      (formulas[r] as string[])[c] = "";
      (formats[r] as string[])[c] = format;
    },
  };
}

export type Put = (row: number, column: number, value: LogbookValue, format?: string) => void;

/** More columns of one that is there: the first stays where it stands. */
export const furtherColumns = (of: MappedColumn, from: number, count: number): MappedColumn[] =>
  Array.from({ length: count }, (_, at) => ({ ...of, column: from + at }));

export function withTitresSplit(book: Book): Book {
  const { mapping, cells } = book;
  const { firstRow, lastRow } = mapping.place;
  const [titre, ...others] = columnsOf(mapping, "titre");
  if (!titre || others.length > 0) return book;
  let most = 1;
  for (let row = firstRow; row <= lastRow; row += 1)
    most = Math.max(most, figuresIn(heldCell(cells, row, titre.column).value)?.length ?? 1);
  if (most === 1) return book;
  const end = endOf(cells).column;
  const wide = widened(cells, most - 1);
  for (let row = firstRow; row <= lastRow; row += 1)
    figuresIn(heldCell(cells, row, titre.column).value)?.forEach((figure, at) => {
      // a comma in such a list is a decimal mark: nobody writes thousands of mL
      const value = numberFromText(figure, "decimal")?.value ?? "";
      wide.put(row, at === 0 ? titre.column : end + at - 1, value);
    });
  return {
    cells: wide.cells,
    mapping: {
      ...mapping,
      columns: [...mapping.columns, ...furtherColumns(titre, end, most - 1)],
    },
  };
}
