/** A workbook of our own as a file: an empty file, and the patch that fills it. */
import type { Book, BookCell, BookSheet, BookTable } from "../sheet/book";
import type { Place } from "../sheet/area";

import { bookLook } from "./book-look";
import { drawnFrom } from "./chart/drawn-from";
import type { Content, Edit } from "./patch/edits";
import { emptyFile } from "./new-file";
import { answer, type FileProblem, isFileProblem, refuse } from "./problem";
import { newHeights } from "./new-heights";
import { patchXlsx } from "./patch";

function contentOf({ value, formula, results }: BookCell): Content {
  if (formula !== undefined) {
    const result = results?.[0]?.[0] ?? value;
    const isMany = results !== undefined && (results.length > 1 || (results[0]?.length ?? 0) > 1);
    return { kind: "formula", formula, result, ...(isMany ? { spilled: results } : {}) };
  }
  return value === undefined ? { kind: "keep" } : { kind: "value", value };
}

function cellEdits(sheet: BookSheet, cell: BookCell, at: Place): Edit[] {
  const look = bookLook(sheet, cell, at);
  const dress = {
    ...(cell.format === undefined ? {} : { format: cell.format }),
    ...(look === undefined ? {} : { look }),
  };
  const place = { sheet: sheet.name, ...at };
  const note: Edit[] =
    cell.note === undefined ? [] : [{ do: "add-note", ...place, text: cell.note }];
  return [{ do: "set-cell", ...place, content: contentOf(cell), ...dress }, ...note];
}

/** The one formula of each column that has one in every row. */
function columnFormulas(sheet: BookSheet, table: BookTable): Record<string, string> {
  const rows = sheet.rows.slice(table.row, table.row + table.rows);
  const formulas: Record<string, string> = {};
  for (let column = table.column; column < table.column + table.columns; column++) {
    const [heading, ...cells] = rows.map((row) => row[column]);
    const formula = cells[0]?.formula;
    const isSame = formula !== undefined && cells.every((cell) => cell?.formula === formula);
    if (isSame && typeof heading?.value === "string") formulas[heading.value] = formula;
  }
  return formulas;
}

function sheetEdits(book: Book, sheet: BookSheet, index: number): Edit[] {
  const { name } = sheet;
  const add: Edit[] = index === 0 ? [] : [{ do: "add-sheet", name }];
  return [
    ...add,
    // Tables first: a formula may name a column of the table it stands in.
    ...sheet.tables.map((table): Edit => ({
      do: "add-table",
      sheet: name,
      name: table.name,
      area: table,
      formulas: columnFormulas(sheet, table),
    })),
    ...sheet.rows.flatMap((cells, row) =>
      cells.flatMap((cell, column) => (cell ? cellEdits(sheet, cell, { row, column }) : [])),
    ),
    ...sheet.columnWidths.map((characters, column): Edit => ({
      do: "set-width",
      sheet: name,
      column,
      characters,
    })),
    ...(sheet.inputs ?? []).map(({ area, words = [], help }): Edit => {
      const shown = help === undefined ? {} : { help };
      return { do: "offer-words", sheet: name, area, words, ...shown };
    }),
    ...(sheet.charts ?? []).map((chart): Edit => ({
      do: "add-chart",
      sheet: name,
      ...drawnFrom(book, chart),
    })),
    ...(sheet.print ? [{ do: "print-setup", sheet: name, ...sheet.print } as const] : []),
    ...newHeights(sheet).map(({ row, height, isSet }): Edit => ({
      do: "set-height",
      sheet: name,
      row,
      points: height,
      ...(isSet ? {} : { isFitted: true }),
    })),
    { do: "freeze", sheet: name, rows: sheet.frozenRows, columns: sheet.frozenColumns ?? 0 },
  ];
}

/** A formula whose result is not given has none in the file: compute the book first. */
export function newXlsx(book: Book): Uint8Array | FileProblem {
  return answer(() => {
    const first = book.sheets[0]?.name ?? refuse({ code: "not-a-workbook" });
    const made = patchXlsx(
      emptyFile(first),
      book.sheets.flatMap((sheet, index) => sheetEdits(book, sheet, index)),
    );
    return isFileProblem(made) ? refuse(made.fields) : made;
  });
}
