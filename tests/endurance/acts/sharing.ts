/** The workbook as a file, and a copy for somebody without the add-in: nothing typed is lost. */
import type { MemorySheet } from "../../host/memory/book";
import type { CellContent } from "../../../src/sheet/port";
import type { Book, BookCell, BookSheet } from "../../../src/sheet/book";
import { shareWorkbook } from "../../../src/partner/sharing";
import { isFileProblem, newXlsx, openXlsx, sayFile, type Workbook } from "../../../src/xlsx";
import type { World } from "../world";

function rowsOf({ cells }: MemorySheet, results: readonly (readonly CellContent[])[]) {
  const places = Object.keys(cells).map((place) => place.split(",").map(Number));
  const count = Math.max(0, ...places.map(([row = 0]) => row + 1));
  const rows: (BookCell | null)[][] = Array.from({ length: count }, () => []);
  for (const [row = 0, column = 0] of places) {
    const cell = cells[`${String(row)},${String(column)}`];
    const target = rows[row];
    if (!cell || !target || (cell.value === "" && cell.formula === "")) continue;
    const result = results[row]?.[column] ?? "";
    const shown: BookCell =
      cell.formula === "" ? { value: cell.value } : { formula: cell.formula, results: [[result]] };
    target[column] = { ...shown, format: cell.format };
  }
  return rows.map((row) => Array.from(row, (cell) => cell ?? null));
}

async function bookOf(world: World): Promise<Book> {
  const book = world.workbook.host.book;
  const sheets: BookSheet[] = [];
  for (const sheet of book.sheets) {
    const block = { sheet: sheet.name, row: 0, column: 0, rows: 60, columns: 60 };
    const { values } = await world.workbook.cells(block);
    const tables = book.tables.filter((table) => table.block.sheet === sheet.name);
    sheets.push({
      name: sheet.name,
      rows: rowsOf(sheet, values),
      columnWidths: [],
      tables: tables.map(({ name, block: { row, column, rows, columns } }) => ({
        name,
        row,
        column,
        rows,
        columns,
      })),
      frozenRows: 0,
    });
  }
  return { name: "shared", sheets };
}

const opened = (bytes: Uint8Array, what: string): Workbook => {
  const found = openXlsx(bytes);
  if (isFileProblem(found)) throw new Error(`${what}: ${sayFile(found)}`);
  return found;
};

/** Headings of a table are texts in a file. */
const isSame = (one: unknown, other: unknown): boolean =>
  one === other || String(one) === String(other);

/** Sheets that a formula names. */
const sheetsIn = (formula: string): string[] =>
  [...formula.replace(/"[^"]*"/g, "").matchAll(/(?:'((?:[^']|'')+)'|(?<!#)\b(\w+))!/g)].map(
    ([, quoted, plain]) => quoted?.replaceAll("''", "'") ?? plain ?? "",
  );

/** A formula of the copy that names a sheet which is not there. */
function checkReferences({ sheets }: Workbook): void {
  const names = new Set(sheets.map(({ name }) => name.toLowerCase()));
  for (const { name, cells } of sheets) {
    for (const { formula } of cells) {
      const missing = sheetsIn(formula ?? "").find((each) => !names.has(each.toLowerCase()));
      if (missing !== undefined) throw new Error(`${name} refers to ${missing}: ${formula ?? ""}`);
    }
  }
}

export async function shareACopy(world: World): Promise<void> {
  const { workbook } = world;
  const bytes = newXlsx(await bookOf(world));
  if (isFileProblem(bytes)) throw new Error(`the file: ${sayFile(bytes)}`);
  const untouched = bytes.slice();
  const shared = shareWorkbook(bytes, { kind: "partner", fileName: "logbook.xlsx" });
  if (isFileProblem(shared)) throw new Error(`the copy: ${sayFile(shared)}`);
  if (!Buffer.from(untouched).equals(Buffer.from(bytes))) throw new Error("the file was changed");
  const copy = opened(shared.bytes, "the copy");
  checkReferences(copy);
  for (const [what, file] of [
    ["the file", opened(bytes, "the file")],
    ["the copy", copy],
  ] as const) {
    const cells = new Map(
      file.sheets.flatMap((sheet) =>
        sheet.cells.map((cell) => [
          `${sheet.name}!${String(cell.row)},${String(cell.column)}`,
          cell,
        ]),
      ),
    );
    for (const [place, held] of Object.entries(workbook.present)) {
      if (!/!\d+,\d+$/.test(place)) continue;
      const [value, formula] = JSON.parse(held) as [unknown, string];
      const found = cells.get(place);
      if (formula === "" && !isSame(found?.value, value)) {
        throw new Error(`${what}: ${place} holds ${JSON.stringify(found?.value)}, typed ${held}`);
      }
      // a heading that was typed over here takes its formulas with it in no program, but in memory
      if (what === "the copy" && !workbook.isSpoilt && /TITRE[._]/i.test(found?.formula ?? "")) {
        throw new Error(`the copy still calls us in ${place}: ${found?.formula ?? ""}`);
      }
    }
  }
  world.count("copy shared");
  workbook.check("sharing");
}
