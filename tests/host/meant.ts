/** The cells a reference means in the memory host's workbook. */
import type { Block } from "../../src/sheet/port";
import type { CellPlace } from "../../src/sheet/port";
import { type MemoryBook, sheetNamed } from "./memory/book";
import { type KnownTable, meantBy } from "../../src/sheet/formula/meant";

function knownTables(book: MemoryBook): Map<string, KnownTable> {
  const known = new Map<string, KnownTable>();
  for (const { name, block } of book.tables) {
    const cells = sheetNamed(book, block.sheet)?.cells ?? {};
    const headings = Array.from({ length: block.columns }, (_, at) =>
      String(cells[`${block.row},${block.column + at}`]?.value ?? ""),
    );
    known.set(name, { block, headings });
  }
  return known;
}

export function meant(text: string, from: CellPlace, book: MemoryBook): Block | undefined {
  const found = meantBy(text, { ...from, rows: 1, columns: 1 }, knownTables(book));
  return found.kind === "block" ? found.block : undefined;
}
