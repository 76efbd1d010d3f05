/** Check this Excel in Chromium, over a workbook in memory: by keyboard, every state of it. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { BenchHand } from "../taskpane/page/bench";
import { screenFaults } from "../taskpane/page/checks";
import { openChromium, type PaneBrowser } from "../taskpane/page/open-page";
import { hasBrowser } from "./browser";

describe.runIf(hasBrowser)("Check this Excel, in the pane", () => {
  let chromium: PaneBrowser;
  beforeAll(async () => {
    chromium = await openChromium();
  });
  afterAll(async () => {
    await chromium.close();
  });

  it("goes through by keyboard to a sheet, asks for one undo, and takes its other sheets out", async () => {
    const { page, complaints } = await chromium.open(
      { viewport: { width: 320, height: 700 }, colorScheme: "dark", reducedMotion: "reduce" },
      "task=check",
    );
    const hand = new BenchHand(page);
    await hand.press("Check this Excel");
    await page.getByRole("button", { name: "Check in this workbook" }).waitFor();
    expect(await screenFaults(page, 320)).toEqual([]);
    await hand.press("Check in this workbook");
    await page.getByRole("button", { name: "I have pressed Undo once" }).waitFor();
    expect(await screenFaults(page, 320)).toEqual([]);
    await page.evaluate(() => {
      (window as unknown as { titrebook: { host: { undo(): void } } }).titrebook.host.undo();
    });
    await hand.press("I have pressed Undo once");
    await page.getByText(/It is written on the sheet Titrebook check/).waitFor();
    await page.getByText("One undo took table and sheet back.").waitFor();
    // colour is said in words, at each line
    const lines = await page.getByRole("listitem").allInnerTexts();
    expect(lines).toHaveLength(18);
    for (const line of lines) expect(line).toMatch(/\n(?:green|amber|red): /);
    expect(await screenFaults(page, 320)).toEqual([]);
    await hand.press("Take the sheets it worked on out");
    await page.getByText(/They are taken out/).waitFor();
    const names = await page.evaluate(() =>
      (
        window as unknown as { titrebook: { host: { book: { sheets: { name: string }[] } } } }
      ).titrebook.host.book.sheets.map(({ name }) => name),
    );
    expect(names).toEqual(["Sheet1", "Titrebook check"]);
    expect(complaints).toEqual([]);
  });

  it("runs in no workbook that holds something, and says what to do", async () => {
    const { page } = await chromium.open(
      { viewport: { width: 320, height: 700 } },
      "task=check&book=sample",
    );
    await page.getByRole("button", { name: "Check this Excel" }).press("Enter");
    await page.getByRole("button", { name: "Check in this workbook" }).press("Enter");
    await page.getByText(/This workbook holds something/).waitFor();
    await page.getByRole("button", { name: "Open an empty workbook" }).press("Enter");
    await page.getByText(/No empty workbook could be opened/).waitFor();
    expect(await screenFaults(page, 320)).toEqual([]);
  });
});
