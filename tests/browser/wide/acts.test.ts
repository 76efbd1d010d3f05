/** Rows and sheets of the open workbook changed by hand: taken back, done again, kept, saved, read elsewhere. */
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { isFileProblem, openXlsx, sayFile, type Workbook } from "../../../src/xlsx";
import { hasLibreOffice, shownBy } from "../../spreadsheet/xlsx/libreoffice";
import { violations } from "../../taskpane/page/checks";
import { hasBrowser, type Served, serve } from "../browser";
import {
  at,
  goTo,
  gridIsReady,
  openSheet,
  paneSays,
  saveByKeyboard,
  standing,
  typeInto,
} from "../workbench-page";

const news = (page: Page, words: string | RegExp) =>
  page.locator("#news-words").getByText(words).first().waitFor({ timeout: 60_000 });

const tab = (page: Page, name: string) =>
  page.locator("#grid [data-u-comp=slide-tab-item]").getByText(name, { exact: true });

async function fromSheet(page: Page, item: string): Promise<void> {
  await page.click("#tools");
  await page.getByRole("menuitem", { name: item }).click();
}

async function rename(page: Page, from: string, to: string): Promise<void> {
  await openSheet(page, from);
  await expect
    .poll(async () => {
      await tab(page, from).dblclick();
      return page.locator("#grid [data-u-comp=slide-tab-item] [contenteditable=true]").count();
    })
    .toBe(1);
  await page.keyboard.press("Control+a");
  await page.keyboard.type(to, { delay: 20 });
  await page.keyboard.press("Enter");
}

const saved = async (page: Page) => (await saveByKeyboard(page)).bytes;

function opened(bytes: Uint8Array): Workbook {
  const book = openXlsx(bytes);
  if (isFileProblem(book)) throw new Error(sayFile(book));
  return book;
}

const cellOf = (book: Workbook, sheet: string, row: number, column: number) =>
  book.sheets
    .find(({ name }) => name === sheet)
    ?.cells.find((cell) => cell.row === row && cell.column === column);

describe.runIf(hasBrowser)("rows and sheets of the open workbook", () => {
  let served: Served;
  beforeAll(async () => {
    served = await serve();
  });
  afterAll(() => served.close());

  const begun = async (width: number, height: number) => {
    const { page, complaints } = await served.open({ viewport: { width, height } });
    page.on("dialog", (dialog) => void dialog.accept());
    await page.goto(served.address);
    await page.waitForSelector("#save:enabled", { timeout: 60_000 });
    await gridIsReady(page);
    return { page, complaints };
  };

  it(
    "are changed in the file, taken back and done again, kept over a reload, and saved",
    { timeout: 300_000 },
    async () => {
      const { page, complaints } = await begun(1400, 850);
      await openSheet(page, "Batches");
      // what is typed before, and what is still being typed, goes with it
      await typeInto(page, at("Batches", "Amount", 2), "120");
      await goTo(page, at("Batches", "Amount", 1));
      await page.keyboard.type("90", { delay: 20 });
      await fromSheet(page, "Insert rows above");
      await news(page, "1 row inserted above row 4 of Batches.");
      await paneSays(page, "Empty");
      expect(await page.locator("#pane h2").first().innerText()).toBe("Batches D4");
      await page.keyboard.press("Control+z");
      await news(page, "Taken back: 1 row inserted");
      await paneSays(page, "90.0");
      await page.keyboard.press("Control+y");
      await news(page, "Done again: 1 row inserted");
      await paneSays(page, "Empty");

      // the new row is one of the table: 80 L of oil of the usual density
      await typeInto(page, "C4", "SW-17");
      await typeInto(page, "D4", "80");
      await typeInto(page, "E4", "l");
      await goTo(page, "F4");
      await paneSays(page, /^73\.2/);
      await standing(page, "kept in this browser only");
      await rename(page, "Lots", "It's so");
      await news(page, "The sheet Lots is now called It's so.");
      await openSheet(page, "Titrations");
      await tab(page, "Titrations").click({ button: "right" });
      await page.getByText("Delete", { exact: true }).last().click();
      await page
        .locator("#ask-act")
        .getByText(/^Delete the sheet Titrations\? \d+ formula/)
        .waitFor();
      expect(await violations(page)).toEqual([]);
      await page.locator("#ask-act").getByRole("button", { name: "Cancel" }).click();
      await tab(page, "Titrations").waitFor();
      await standing(page, "kept in this browser only");
      await page.reload();
      await news(page, "is open again");
      await openSheet(page, "Batches");
      await goTo(page, "F4");
      await paneSays(page, /^73\.2/);
      await tab(page, "It's so").waitFor();

      const bytes = await saved(page);
      const book = opened(bytes);
      expect(book.sheets.map(({ name }) => name).slice(0, 4)).toEqual([
        "Start here",
        "It's so",
        "Titrations",
        "Batches",
      ]);
      const batches = book.sheets.find(({ name }) => name === "Batches");
      expect(batches?.tables[0]?.area).toMatchObject({ row: 2, rows: 8 });
      // by hand: 80 L x 0.915 kg/L
      expect(cellOf(book, "Batches", 3, 5)?.value).toBeCloseTo(73.2, 9);
      expect(cellOf(book, "Batches", 4, 3)?.value).toBe(90);
      expect(cellOf(book, "Batches", 5, 3)?.value).toBe(120);
      if (hasLibreOffice()) {
        const shown = shownBy(new Map([["acted", bytes]]), 1).get("acted");
        expect(shown?.get("Batches")?.[3]?.slice(3, 6)).toEqual(["80", "l", "73.2"]);
        expect(shown?.has("It's so")).toBe(true);
      }
      expect(complaints).toEqual([]);
      await page.context().close();
    },
  );

  it("are changed on a telephone too, from the same button", async () => {
    const { page, complaints } = await begun(320, 700);
    await fromSheet(page, "Delete rows");
    await news(page, /^Row \d+ of Batches deleted/);
    await page.locator("#news-words").getByRole("button", { name: "Undo" }).click();
    await news(page, "Taken back: Row");
    expect(complaints).toEqual([]);
    await page.context().close();
  });
});
