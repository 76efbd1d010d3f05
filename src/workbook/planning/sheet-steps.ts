/**
 * A sheet of ours as steps for a host. Headings first, then the table, then its rows: a formula that
 * names a table's columns means nothing before the table is there.
 */
import type { Block, Content, Step } from "../../sheet/port";
import type { BookCell, BookSheet, BookTable } from "../../sheet/book";
import { cellAt } from "../../sheet/address";

/** A cell of a book as a host is told of it. */
export function contentOf(cell: BookCell | null): Content {
  if (!cell) return { kind: "keep" };
  const look = {
    ...(cell.format === undefined ? {} : { format: cell.format }),
    ...(cell.style === undefined ? {} : { style: cell.style }),
  };
  return cell.formula === undefined
    ? { kind: "value", value: cell.value ?? "", ...look }
    : { kind: "formula", formula: cell.formula, ...look };
}

/** What a sheet is made of where it holds no table. */
export type PlainSheet = Pick<BookSheet, "name" | "rows" | "columnWidths">;

/** Some rows of the sheet, all of one width. */
function cells(sheet: PlainSheet, row: number, rows: number, columns: number): Step {
  const contents = sheet.rows
    .slice(row, row + rows)
    .map((given) =>
      Array.from({ length: columns }, (_, column) => contentOf(given[column] ?? null)),
    );
  return { do: "set-cells", block: { sheet: sheet.name, row, column: 0, rows, columns }, contents };
}

/** @param widths in characters, from the first column on */
export const widthSteps = (sheet: string, widths: readonly number[]): Step[] =>
  widths.map((characters, column) => ({ do: "set-width", sheet, column, characters }));

/** All cells of a sheet without a table. */
export const wholeBlock = ({ name, rows, columnWidths }: PlainSheet): Block => ({
  sheet: name,
  row: 0,
  column: 0,
  rows: rows.length,
  columns: columnWidths.length,
});

/** The steps that make a sheet without a table. */
export const plainSheetSteps = (sheet: PlainSheet): Step[] => [
  { do: "add-sheet", name: sheet.name },
  cells(sheet, 0, sheet.rows.length, sheet.columnWidths.length),
  ...widthSteps(sheet.name, sheet.columnWidths),
];

const notes = (sheet: BookSheet): Step[] =>
  sheet.rows.flatMap((given, row) =>
    given.flatMap((cell, column) =>
      cell?.note === undefined
        ? []
        : [{ do: "add-note", block: cellAt(sheet.name, row, column), text: cell.note } as const],
    ),
  );

export const tableBlock = (sheet: BookSheet, table: BookTable): Block => ({
  sheet: sheet.name,
  row: table.row,
  column: table.column,
  rows: table.rows,
  columns: table.columns,
});

/** The steps that make a sheet which holds one table. */
export function sheetSteps(sheet: BookSheet, table: BookTable): Step[] {
  const body = table.row + 1;
  return [
    { do: "add-sheet", name: sheet.name },
    cells(sheet, 0, body, table.columns),
    { do: "add-table", name: table.name, block: tableBlock(sheet, table) },
    cells(sheet, body, table.rows - 1, table.columns),
    ...widthSteps(sheet.name, sheet.columnWidths),
    ...notes(sheet),
    { do: "freeze-rows", sheet: sheet.name, rows: sheet.frozenRows },
  ];
}
