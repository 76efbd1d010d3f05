/** What a person does on the workbench page, in steps. The grid is a canvas: it is used by keyboard. */
import { readFileSync } from "node:fs";
import type { Download, FileChooser, Page } from "playwright-core";
import { cellName } from "../../src/sheet/cell-name";
import { cellUnder } from "../../src/workbench/opens-at";
import { sampleLogbook } from "../../src/workbook/sample/logbook";

const book = sampleLogbook();

/** The address of a cell of the sample: under a heading, in a row of the table counted from 1. */
export function at(sheet: string, heading: string, row: number): string {
  const place = cellUnder(book, sheet, heading, row);
  if (!place) throw new Error(`The sheet ${sheet} has no column ${heading}.`);
  return cellName(place.row, place.column);
}

/** The grid is there; a newcomer, who is asked, looks at the example. */
export async function gridIsReady(page: Page): Promise<void> {
  await page.waitForSelector('#sheet[data-showing="grid"]', { timeout: 60_000 });
  const isAsked = await page.locator('#work[data-asks="newcomer"]').count();
  if (isAsked === 0) return;
  await page.getByRole("button", { name: "Look at the example" }).click();
  await page.locator('#work[data-asks=""]').waitFor();
}

/** The pane says this of the selected cell; waits until it does. */
export const paneSays = (page: Page, words: string | RegExp) =>
  page.locator("#pane").getByText(words).first().waitFor({ timeout: 15_000 });

export const openSheet = async (page: Page, name: string) => {
  await page.locator("#grid").getByText(name, { exact: true }).click();
  await page.locator("#pane h2").getByText(name).waitFor();
};

/** Goes to a cell by typing its address into the name box. */
export async function goTo(page: Page, address: string): Promise<void> {
  const nameBox = page.locator("#grid input").first();
  await nameBox.fill(address);
  await nameBox.press("Enter");
  await page.locator("#pane h2").getByText(address).waitFor();
}

export async function typeInto(page: Page, address: string, text: string): Promise<void> {
  await goTo(page, address);
  await page.keyboard.type(text, { delay: 20 });
  await page.keyboard.press("Enter");
}

/** The button Open, by keyboard, and a file in place of what the browser kept. */
export async function chooserOf(page: Page): Promise<FileChooser> {
  let isThere = false;
  const choosing = page.waitForEvent("filechooser", { timeout: 30_000 }).finally(() => {
    isThere = true;
  });
  await page.focus("#open");
  await page.keyboard.press("Enter");
  const list = page.locator("#kept[open]");
  while (!isThere && !(await list.isVisible())) await page.waitForTimeout(20);
  if (!isThere) await page.keyboard.press("Enter");
  return choosing;
}

/** Opens what was made in memory, as a file that was chosen. */
export async function openBytes(page: Page, name: string, bytes: Uint8Array): Promise<void> {
  const file = { name, mimeType: "application/zip", buffer: Buffer.from(bytes) };
  await page.locator("#chooser").setInputFiles(file);
  await page.locator("#news-words").getByText(`${name} is open.`).waitFor();
}

/** What the bar says of where the workbook is. */
export const standing = (page: Page, words: string) =>
  page.locator("#standing").getByText(words, { exact: true }).waitFor({ timeout: 30_000 });

/**
 * Saves by Ctrl+S, to the end: pressed again before that, it would rightly bring no second file where
 * nothing was changed meanwhile.
 */
export async function saveByKeyboard(
  page: Page,
): Promise<{ bytes: Uint8Array; download: Download }> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.keyboard.press("Control+s"),
  ]);
  await page
    .locator("#news-words")
    .getByText(/^Saved as/)
    .first()
    .waitFor({ timeout: 60_000 });
  return { bytes: new Uint8Array(readFileSync(await download.path())), download };
}
