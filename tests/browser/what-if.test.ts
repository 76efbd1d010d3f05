/** The what-if task in Chromium: by keyboard alone to a written table, and what every screen must hold. */
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Found } from "../../src/sheet/port";
import { BenchHand, QuickHand } from "../taskpane/page/bench";
import { faultsOnTheWay } from "../taskpane/page/looks";
import { openChromium, type PaneBrowser } from "../taskpane/page/open-page";
import {
  fillLye,
  untickLots,
  fillSizes,
  whatIfLotScenes,
  whatIfScenes,
} from "../taskpane/page/what-if-scenes";
import { byHand } from "../workbook/what-if/questions";
import { cases, rarely } from "../wide";
import { hasBrowser } from "./browser";
import { bookOf, undo, type PaneWindow } from "./host-in-page";

/** What the cells of the written table show. */
async function shown(page: Page, rows: number, columns: number): Promise<unknown[][]> {
  const found = await page.evaluate(
    async (block) =>
      (window as unknown as PaneWindow).titrebook.host.read([{ ask: "cells", block }]),
    { sheet: "What if", row: 14, column: 0, rows, columns },
  );
  const [cells] = found as Found[];
  return cells?.kind === "cells" ? (cells.values as unknown[][]) : [];
}

async function toTable(hand: BenchHand, acids: string): Promise<void> {
  await hand.page.getByRole("heading", { level: 2 }).waitFor();
  await fillSizes(hand);
  await hand.page.keyboard.press("Enter");
  await hand.page.getByRole("heading", { level: 2, name: /Compare/ }).waitFor();
  await hand.type("Acid values to compare", acids);
  await fillLye(hand);
  await hand.page.keyboard.press("Enter");
  await hand.page.getByRole("heading", { level: 2, name: /Table/ }).waitFor();
}

async function write(hand: BenchHand): Promise<void> {
  await hand.next("Write");
  await hand.page.getByRole("button", { name: "Write this table" }).waitFor();
  await hand.press("Write this table");
  await hand.page.getByText(/Written in/).waitFor();
  await hand.page.getByRole("button", { name: "4 Write, done" }).waitFor();
}

describe.runIf(hasBrowser)("the what-if task in a browser", () => {
  let chromium: PaneBrowser;
  beforeAll(async () => {
    chromium = await openChromium();
  });
  afterAll(async () => {
    await chromium.close();
  });

  it("shows the cautions of planning at every step, the first included", async () => {
    const { page } = await chromium.open({}, "task=what-if");
    const hand = new QuickHand(page);
    await page.getByRole("heading", { level: 2 }).waitFor();
    for (const step of ["Sizes", "Compare", "Table", "Write"]) {
      if (step !== "Sizes") await hand.next(step);
      await page.getByRole("heading", { level: 2, name: new RegExp(step) }).waitFor();
      const said = await page.locator(".cautions-now").innerText();
      expect(said).toMatch(/not a permission[\s\S]*work alone[\s\S]*advise against/);
    }
    await page.context().close();
  });

  it("writes 12 sizes by 4 acid values by keyboard alone, right to 1e-12, and one undo takes all of it back", async () => {
    const { page, complaints } = await chromium.open({}, "task=what-if");
    const hand = new BenchHand(page);
    const before = await bookOf(page);
    await toTable(hand, "0.5 2 5 9.9");
    expect(await bookOf(page)).toEqual(before);
    await write(hand);
    const rows = await shown(page, 12, 6);
    for (const [at, row] of rows.entries()) {
      const size = 50 * (at + 1);
      expect(row[0]).toBe(size);
      for (const [across, acid] of [0.5, 2, 5, 9.9].entries()) {
        const dose = Number(row[across + 2]);
        expect(Math.abs(dose / byHand(size * 0.915, acid) - 1)).toBeLessThan(1e-12);
      }
    }
    const book = await bookOf(page);
    expect(book.sheets[1]?.charts[0]?.lines.map(({ name }) => name)).toEqual([
      "0.5 mg KOH/g",
      "2 mg KOH/g",
      "5 mg KOH/g",
      "9.9 mg KOH/g",
    ]);
    expect(await hand.hears()).toBe("Write it once more");
    await undo(page);
    expect(await bookOf(page)).toEqual(before);
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  it("names what stands at the selected cell, and writes over it only when that is confirmed", async () => {
    const { page } = await chromium.open({}, "task=what-if");
    const hand = new QuickHand(page);
    await page.evaluate(async () => {
      const { host } = (window as unknown as PaneWindow).titrebook;
      const block = { sheet: "Sheet1", row: 4, column: 1, rows: 1, columns: 1 };
      const contents = [[{ kind: "value" as const, value: "keep me" }]];
      await host.write("By hand", [{ do: "set-cells", block, contents }]);
      host.select(block);
    });
    await toTable(hand, "2 5");
    await hand.next("Write");
    await hand.pick("The selected cell");
    await page.getByText('Sheet1!B5 holds "keep me", which would be lost.').waitFor();
    await hand.press("Write this table");
    expect((await bookOf(page)).sheets[0]?.cells["4,1"]?.value).toBe("keep me");
    await hand.press("Do it all the same: Sheet1!B5", "Space");
    await hand.press("Write this table");
    await page.getByText("Written in B5:E30 of the sheet Sheet1.").waitFor();
    await undo(page);
    expect((await bookOf(page)).sheets[0]?.cells["4,1"]?.value).toBe("keep me");
    await page.context().close();
  });

  it("compares recorded lots by reference", async () => {
    const { page } = await chromium.open({}, "task=what-if&book=sample");
    const hand = new QuickHand(page);
    await page.getByRole("heading", { level: 2 }).waitFor();
    await fillSizes(hand);
    await hand.next("Compare");
    await untickLots(hand);
    await hand.press(/^NQ-43:/, "Space");
    await fillLye(hand);
    await hand.next("Table");
    await page.getByRole("columnheader", { name: "NQ‑43" }).waitFor();
    await write(hand);
    const sheet = (await bookOf(page)).sheets.find(({ name }) => name === "What if");
    expect(sheet?.cells["11,2"]?.value).toBe("NQ-43");
    expect(sheet?.cells["12,2"]?.formula).toBe(
      "=LOOKUP(2,1/(Titrations[Lot]=C$12),Titrations[Acid value mg KOH/g])",
    );
    await page.context().close();
  });

  it("keeps what was typed through a reload, and speaks with a comma where that is usual", async () => {
    const { page } = await chromium.open({}, "task=what-if&locale=de-DE");
    const hand = new QuickHand(page);
    await toTable(hand, "0,5; 2,25");
    await page.getByRole("columnheader", { name: "2,25" }).waitFor();
    await page.waitForTimeout(1000);
    await page.reload();
    await page.getByRole("columnheader", { name: "2,25" }).waitFor();
    await hand.press("Back");
    expect(await page.getByLabel("Acid values to compare").inputValue()).toBe("0,5; 2,25");
    await page.context().close();
  });

  rarely("shows a table of 50 by 50 within a moment", async () => {
    const { page } = await chromium.open({}, "task=what-if");
    const hand = new QuickHand(page);
    await page.getByRole("heading", { level: 2 }).waitFor();
    await hand.type("Batch sizes", Array.from({ length: 50 }, (_, at) => 20 * (at + 1)).join(" "));
    await hand.next("Compare");
    const acids = Array.from({ length: 50 }, (_, at) => (0.15 * (at + 1)).toFixed(2)).join(" ");
    await hand.type("Acid values to compare", acids);
    await fillLye(hand);
    await hand.next("Table");
    await page.getByText("The first 30 of 50 sizes and 12 of 50 columns are shown here").waitFor();
    await write(hand);
    const rows = await shown(page, 50, 52);
    expect(Number(rows[49]?.[51]) / byHand(1000 * 0.915, 7.5)).toBeCloseTo(1, 12);
    await page.context().close();
  });

  it.each(
    cases(
      [["task=what-if&book=sample", whatIfLotScenes]] as const,
      [["task=what-if", whatIfScenes]] as const,
    ),
  )("has no accessibility fault on any screen and fits, in every look: %s", async (query, walk) => {
    expect(await faultsOnTheWay(chromium, query, walk)).toEqual([]);
  });
});
