/** The old logbook in the workbench, by keyboard: opened, understood, put right, added to, re-checked, saved. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { isFileProblem, openXlsx, sayFile } from "../../../src/xlsx";
import { root } from "../../rules/sources-of";
import { BenchHand, QuickHand } from "../../taskpane/page/bench";
import { chooseFour, understand } from "../../taskpane/page/logbook-scenes";
import { oldLogbookKey } from "../../adopt/recheck/old-logbook-key";
import { bookOf, partsOf } from "../../xlsx/files";
import { hasBrowser, type Served, serve } from "../browser";
import { chooserOf, gridIsReady, saveByKeyboard } from "../workbench-page";

/** A logbook of another workbook, two rows of it. */
const otherBook = (): Buffer => {
  const line = (row: number, cells: readonly (string | number)[]): string =>
    `<row r="${String(row)}">${cells
      .map((cell, at) => {
        const place = `${String.fromCharCode(65 + at)}${String(row)}`;
        return typeof cell === "number"
          ? `<c r="${place}"><v>${String(cell)}</v></c>`
          : `<c r="${place}" t="inlineStr"><is><t>${cell}</t></is></c>`;
      })
      .join("")}</row>`;
  const rows = [
    ["Drum", "Titre mL", "Blank mL", "Sample g", "KOH mol/L", "Acid value"],
    ["d1", 2.5, 0.1, 10, 0.1, 1.35],
    ["d2", 3.5, 0.1, 10, 0.1, 1.91],
  ];
  return Buffer.from(bookOf(rows.map((cells, at) => line(at + 1, cells)).join("")));
};

const file = join(root, "sample-workbooks/old-logbook.xlsx");

/** What new columns and a new sheet change in a file; every other part stays as it was. */
const mayChange =
  /^(?:xl\/worksheets\/sheet(?:1|3)\.xml|xl\/workbook\.xml|xl\/styles\.xml|xl\/metadata\.xml|xl\/calcChain\.xml|xl\/_rels\/workbook\.xml\.rels|\[Content_Types\]\.xml)$/;

/** F6 goes from the sheet to the pane, and from anywhere else into the sheet first. */
async function intoPane(page: Page): Promise<void> {
  const isThere = () =>
    page.evaluate(() => document.querySelector("#pane")?.contains(document.activeElement) ?? false);
  for (let times = 0; times < 3 && !(await isThere()); times += 1) {
    await page.keyboard.press("F6");
    await page.waitForTimeout(200);
  }
}

describe.runIf(hasBrowser)("the old logbook beside the grid", () => {
  let served: Served;
  beforeAll(async () => {
    served = await serve();
  });
  afterAll(() => served.close());

  it("is understood, put right, given four columns, re-checked, reported on and saved by keyboard alone", async () => {
    const { page, complaints } = await served.open();
    page.on("filechooser", () => undefined);
    await page.goto(served.address);
    await gridIsReady(page);
    await page.focus("#open");
    const [chooser] = await Promise.all([
      page.waitForEvent("filechooser"),
      page.keyboard.press("Enter"),
    ]);
    await chooser.setFiles(file);
    await page.locator("#news-words").getByText("is open.").waitFor({ timeout: 60_000 });
    await gridIsReady(page);

    const hand = new BenchHand(page);
    await intoPane(page);
    await hand.press("Logbook");
    await understand(hand);
    await hand.next("Add columns");
    await chooseFour(hand);
    await hand.press("Add these 4 columns");
    await page
      .getByText(/^.*Written in U7:X209 of the sheet Oil book/)
      .waitFor({ timeout: 60_000 });
    await hand.next("Re-check");
    await hand.press("Re-check every row");
    await page.getByText(/Checked in \d/).waitFor({ timeout: 60_000 });
    await hand.press("Report on a new sheet");
    await page.getByRole("button", { name: "Write this report" }).waitFor({ timeout: 60_000 });
    await hand.press("Write this report");
    await page.getByText(/Written in .* of the sheet Re-check report/).waitFor({ timeout: 60_000 });
    const { bytes } = await saveByKeyboard(page);
    const [before, after] = [partsOf(readFileSync(file)), partsOf(bytes)];
    const changed = Object.keys({ ...before, ...after }).filter(
      (name) => before[name] !== after[name],
    );
    expect(changed.filter((name) => !mayChange.test(name))).toEqual([]);

    const book = openXlsx(bytes);
    if (isFileProblem(book)) throw new Error(sayFile(book));
    const valueAt = (sheet: number, row: number, column: number) =>
      book.sheets[sheet]?.cells.find((cell) => cell.row === row && cell.column === column)?.value;
    // Row 38 by hand: the titres less the blank; 56.1 x (5.61 / 56.1053) x net / sample; 282 / 561 of that.
    const [d, e, f, g, j] = [3, 4, 5, 6, 9].map((column) => Number(valueAt(0, 37, column)));
    const net = (Number(d) + Number(e) + Number(f)) / 3 - Number(g);
    const acidValue = (56.1 * (5.61 / 56.1053) * net) / Number(j);
    expect(Number(valueAt(0, 37, 20))).toBeCloseTo(net, 10);
    expect(Number(valueAt(0, 37, 21))).toBeCloseTo(acidValue, 10);
    expect(Number(valueAt(0, 37, 22))).toBeCloseTo((acidValue * 282) / 561, 10);
    const report = book.sheets.find(({ name }) => name === "Re-check report");
    const lines = report?.cells.filter(
      ({ column, value }) => column === 0 && /^[A-Z]\d+$/.test(String(value)),
    );
    expect(lines?.map(({ value }) => String(value)).sort()).toEqual(
      oldLogbookKey.map((each) => each.split(" ")[0]).sort(),
    );
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  it("begins anew when another workbook is opened: nothing found, agreed or written beside the one before is said of it", async () => {
    const { page, complaints } = await served.open();
    await page.goto(served.address);
    await gridIsReady(page);
    const open = async (given: Parameters<Page["setInputFiles"]>[1]): Promise<void> => {
      await (await chooserOf(page)).setFiles(given as string);
      await page.locator("#news-words").getByText("is open.").waitFor({ timeout: 60_000 });
      await gridIsReady(page);
    };
    await open(file);
    const hand = new QuickHand(page);
    await intoPane(page);
    await hand.press("Logbook");
    await understand(hand);
    await hand.next("Add columns");
    await chooseFour(hand);
    await page.evaluate(() => {
      const words = document.querySelector("#news-words");
      if (words) words.textContent = "";
    });
    await open({ name: "other.xlsx", mimeType: "", buffer: otherBook() } as never);
    await page.getByText(/^The sheet Data: headings in row 1/).waitFor({ timeout: 60_000 });
    const pane = (await page.locator("#pane").innerText()).replace(/\s+/g, " ");
    expect(pane).not.toContain("Oil book");
    expect(pane).not.toContain("Agreed");
    expect(pane).toContain("The other steps begin once the columns are agreed");
    expect(await page.getByRole("button", { name: /^Next:/ }).count()).toBe(0);
    expect(complaints).toEqual([]);
    await page.context().close();
  });
});
