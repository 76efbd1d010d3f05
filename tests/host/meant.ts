/** The cells a reference means in the memory host's workbook, as it stands while it is worked out once. */
import type { Block } from "../../src/sheet/port";
import type { CellPlace } from "../../src/sheet/port";
import type { Surroundings } from "./memory/answers";
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

/** The workbook changes between one working out and the next, and never within one. */
const tablesOf = new WeakMap<Surroundings, Map<string, KnownTable>>();

export function meant(text: string, from: CellPlace, around: Surroundings): Block | undefined {
  const tables = tablesOf.get(around) ?? knownTables(around.book);
  tablesOf.set(around, tables);
  const found = meantBy(text, { ...from, rows: 1, columns: 1 }, tables);
  return found.kind === "block" ? found.block : undefined;
}
