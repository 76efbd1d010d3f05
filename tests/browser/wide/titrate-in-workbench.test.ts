import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { BenchHand, fillSlip } from "../../taskpane/page/bench";
import { hasBrowser, type Served, serve } from "../browser";
import { gridIsReady } from "../workbench-page";

describe.runIf(hasBrowser)("the titration task beside the grid", () => {
  let served: Served;
  beforeAll(async () => {
    served = await serve();
  });
  afterAll(() => served.close());

  it("puts a titration into the logbook by keyboard alone, and one undo takes it out again", async () => {
    const { page, complaints } = await served.open({ viewport: { width: 1400, height: 900 } });
    await page.goto(served.address);
    await gridIsReady(page);
    const hand = new BenchHand(page);
    await page.keyboard.press("F6");
    await hand.press("Titrate");
    // the task is loaded when it is first opened
    await page.getByLabel("How do you know its strength?").waitFor();
    const slip = { lot: "NQ-44", titres: ["2.40", "2.50", "2.45"], blanks: ["0.15"] };
    await fillSlip(hand, slip);
    await hand.next("Result");
    await hand.next("Record");
    await page.getByRole("button", { name: "Record this titration" }).waitFor();
    await hand.press("Record this titration");
    await page.getByText(/Written in row/).waitFor();

    await page.click("#plain-toggle");
    const row = page.locator("#plain tr", { hasText: "NQ-44" });
    await row.first().waitFor();
    // By hand: 2.45 less 0.15.
    expect(await row.first().innerText()).toContain("2.300");
    await page.click("#undo");
    await row.first().waitFor({ state: "detached" });
    expect(complaints).toEqual([]);
  });
});
