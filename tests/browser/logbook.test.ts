/** The logbook task in Chromium: by keyboard alone from a home-made logbook to a report. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { BenchHand, QuickHand } from "../taskpane/page/bench";
import { chooseFour, logbookScenes, understand } from "../taskpane/page/logbook-scenes";
import { faultsOnTheWay } from "../taskpane/page/looks";
import { openChromium, type PaneBrowser } from "../taskpane/page/open-page";
import { oldLogbookKey } from "../adopt/recheck/old-logbook-key";
import { rarely } from "../wide";
import { hasBrowser } from "./browser";
import { bookOf, undo, type PaneWindow } from "./host-in-page";

const old = "task=logbook&book=old";

describe.runIf(hasBrowser)("the logbook task in a browser", () => {
  let chromium: PaneBrowser;
  beforeAll(async () => {
    chromium = await openChromium();
  });
  afterAll(async () => {
    await chromium.close();
  });

  it("understands, is put right, adds four columns and takes them back, by keyboard alone", async () => {
    const { page, complaints } = await chromium.open({}, old);
    const hand = new BenchHand(page);
    const before = await bookOf(page);
    await understand(hand);
    await hand.next("Add columns");
    await chooseFour(hand);
    expect(await bookOf(page)).toEqual(before);
    await hand.press("Add these 4 columns");
    await page.getByText(/Written in/).waitFor();
    const log = (await bookOf(page)).sheets[0];
    expect([20, 21, 22, 23].map((column) => log?.cells[`6,${String(column)}`]?.value)).toEqual([
      "Corrected titre, mL",
      "Acid value, mg KOH/g",
      "FFA as oleic, %",
      "Lye to weigh, g",
    ]);
    expect(log?.cells["208,20"]?.formula).toBe(
      '=IF(COUNT(D209:F209)=0,"",TITRE.CORRECTED(D209:F209,G209))',
    );
    await undo(page);
    expect(await bookOf(page)).toEqual(before);
    // what was agreed is kept by the browser, used under the same headings, and left again at a press
    await page.reload();
    await page.getByText(/Read as in Oil book/).waitFor();
    await page.getByRole("button", { name: "These are right" }).waitFor();
    await hand.press("Read it afresh");
    await page.getByText("to look at").first().waitFor();
    expect(await page.getByText(/Read as in/).count()).toBe(0);
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  it("re-checks, jumps to a cell, and writes the report with a line for each planted mistake", async () => {
    const { page, complaints } = await chromium.open({}, old);
    const hand = new QuickHand(page);
    await understand(hand);
    await hand.press(/^3 Re-check/);
    await hand.press("Re-check every row");
    await page.getByText(/Checked in \d/).waitFor();
    await page.locator("summary", { hasText: /^Blank not subtracted/ }).press("Enter");
    await hand.press("Go to I19");
    const selected = await page.evaluate(async () =>
      (window as unknown as PaneWindow).titrebook.host.read([{ ask: "selection" }]),
    );
    expect(JSON.stringify(selected)).toContain('"row":18,"column":8');
    await hand.press("Report on a new sheet");
    await page.getByRole("button", { name: "Write this report" }).waitFor();
    await hand.press("Write this report");
    await page.getByText(/Written in/).waitFor();
    const report = (await bookOf(page)).sheets.find(({ name }) => name === "Re-check report");
    const cells = Object.entries(report?.cells ?? {}).flatMap(([place, { value }]) =>
      /^\d+,0$/.test(place) && /^[A-Z]\d+$/.test(String(value)) ? [String(value)] : [],
    );
    expect(cells.sort()).toEqual(oldLogbookKey.map((each) => each.split(" ")[0]).sort());
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  rarely("has no fault on any screen, in every look", async () => {
    expect(await faultsOnTheWay(chromium, old, logbookScenes)).toEqual([]);
  });
});
