/** The cells a reference means in the memory host's workbook. */
import type { Block } from "../../src/host/port";
import type { Place } from "../../src/host/memory/answers";
import { type MemoryBook, sheetNamed, tableNamed, usedBlock } from "../../src/host/memory/book";
import { sheetOf, targetOf, type Target } from "../../src/workbook/formula/reference";
import type { Reference } from "../../src/workbook/formula/tree";

type Structured = Extract<Target, { kind: "structured" }>;

function shapeOf(text: string): Reference["shape"] {
  if (text.includes("[")) return "structured";
  return /^([^!]*!)?\$?[a-z]{1,3}(\$?\d+)?(:\$?[a-z]{0,3}(\$?\d+)?)?$/i.test(text)
    ? "cell"
    : "name";
}

function inTable(target: Structured, from: Place, book: MemoryBook): Block | undefined {
  const table = tableNamed(book, target.table);
  const sheet = table && sheetNamed(book, table.block.sheet);
  if (!table || !sheet) return undefined;
  const { row, column, rows, columns } = table.block;
  const places = target.columns.map((heading) =>
    Array.from({ length: columns }, (_, at) => at).findIndex(
      (at) =>
        String(sheet.cells[`${row},${column + at}`]?.value).toLowerCase() === heading.toLowerCase(),
    ),
  );
  if (places.includes(-1)) return undefined;
  const start = places[0] ?? 0;
  const width = (places.at(-1) ?? columns - 1) - start + 1;
  const block = { sheet: sheet.name, column: column + start, columns: width };
  if (!target.sections.includes("this row")) return { ...block, row: row + 1, rows: rows - 1 };
  const isInside = from.sheet === sheet.name && row < from.row && from.row < row + rows;
  return isInside ? { ...block, row: from.row, rows: 1 } : undefined;
}

export function meant(text: string, from: Place, book: MemoryBook): Block | undefined {
  const name = sheetOf({ text })?.first ?? from.sheet;
  const target = targetOf({ text, shape: shapeOf(text) });
  if (target.kind === "structured") return inTable(target, from, book);
  if (target.kind === "name") {
    const table = tableNamed(book, target.name);
    if (table) return { ...table.block, row: table.block.row + 1, rows: table.block.rows - 1 };
    const refersTo = book.definedNames[target.name];
    return refersTo === undefined ? undefined : meant(refersTo, from, book);
  }
  const sheet = sheetNamed(book, name);
  if (target.kind === "lost" || !sheet) return undefined;
  const used = usedBlock(sheet);
  const { top = 0, left = 0 } = target.block;
  const bottom = target.block.bottom ?? (used ? used.row + used.rows - 1 : 0);
  const right = target.block.right ?? (used ? used.column + used.columns - 1 : 0);
  return {
    sheet: sheet.name,
    row: top,
    column: left,
    rows: bottom - top + 1,
    columns: right - left + 1,
  };
}
