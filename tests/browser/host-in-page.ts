/** The workbook in memory behind a pane that was opened alone: what it holds, and its undo. */
import type { Page } from "playwright-core";
import type { MemoryHost } from "../host/memory";
import type { MemoryBook } from "../host/memory/book";

/** The window of such a page, for what a test does in it. */
export type PaneWindow = Window & { titrebook: { host: MemoryHost } };

export const bookOf = (page: Page): Promise<MemoryBook> =>
  page.evaluate(() => (window as unknown as PaneWindow).titrebook.host.book);

export const undo = (page: Page): Promise<void> =>
  page.evaluate(() => {
    (window as unknown as PaneWindow).titrebook.host.undo();
  });

/** The last row of a table by heading: values as they are, formulas as they are written. */
export async function lastRow(page: Page, name: string): Promise<Record<string, unknown>> {
  const { sheets, tables } = await bookOf(page);
  const block = tables.find((table) => table.name === name)?.block;
  const cells = sheets.find((sheet) => sheet.name === block?.sheet)?.cells;
  if (!block || !cells) return {};
  const at = (row: number, column: number) => cells[`${row},${block.column + column}`];
  return Object.fromEntries(
    Array.from({ length: block.columns }, (_, column): [string, unknown] => {
      const cell = at(block.row + block.rows - 1, column);
      return [String(at(block.row, column)?.value), cell?.formula ? cell.formula : cell?.value];
    }),
  );
}
