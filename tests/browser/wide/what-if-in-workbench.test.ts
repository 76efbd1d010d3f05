import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { BenchHand } from "../../taskpane/page/bench";
import { fillLye, untickLots, fillSizes } from "../../taskpane/page/what-if-scenes";
import { hasBrowser, type Served, serve } from "../browser";
import { gridIsReady } from "../workbench-page";

describe.runIf(hasBrowser)("the what-if task beside the grid", () => {
  let served: Served;
  beforeAll(async () => {
    served = await serve();
  });
  afterAll(() => served.close());

  it("writes 12 sizes by 4 acid values by keyboard alone, and one undo takes the sheet away again", async () => {
    const { page, complaints } = await served.open({ viewport: { width: 1400, height: 900 } });
    await page.goto(served.address);
    await gridIsReady(page);
    const hand = new BenchHand(page);
    await page.keyboard.press("F6");
    await hand.press("What if");
    await fillSizes(hand);
    await hand.next("Compare");
    await untickLots(hand);
    await hand.type("Acid values to compare", "0.5 2 5 9.9");
    await fillLye(hand);
    await hand.next("Table");
    await hand.next("Write");
    await page.getByText(/A chart is drawn only in the spreadsheet program/).waitFor();
    await hand.press("Write this table");
    await page.getByText("Written in A1:F26 of the sheet What if.").waitFor();

    await page.click("#plain-toggle");
    // By hand: 549 kg x (5 / 56.1 x 56.1053 + 7.65) / 0.9 = 7716.9 g.
    const row = page.locator("#plain tr", { hasText: "7717" });
    await row.first().waitFor();
    expect(await row.first().innerText()).toMatch(/\b600\s+549\b/);
    await page.click("#undo");
    await row.first().waitFor({ state: "detached" });
    expect(complaints).toEqual([]);
  });
});
