import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { BenchHand } from "../../taskpane/page/bench";
import { fillLimit, fillLye, fillOilOfBatch } from "../../taskpane/page/batch-scenes";
import { hasBrowser, type Served, serve } from "../browser";
import { gridIsReady } from "../workbench-page";

describe.runIf(hasBrowser)("the batch task beside the grid", () => {
  let served: Served;
  beforeAll(async () => {
    served = await serve();
  });
  afterAll(() => served.close());

  it("puts a batch of a recorded lot into Batches by keyboard alone, and one undo takes it out again", async () => {
    const { page, complaints } = await served.open({ viewport: { width: 1400, height: 900 } });
    await page.goto(served.address);
    await gridIsReady(page);
    const hand = new BenchHand(page);
    await page.keyboard.press("F6");
    await hand.press("Batch");
    await page.getByRole("heading", { level: 2, name: /Oil/ }).waitFor();
    await fillOilOfBatch(hand, ["SW-17"]);
    await hand.next("Lye");
    await fillLye(hand);
    await hand.next("Methanol");
    await fillLimit(hand);
    await hand.next("Weigh-out");
    await hand.next("Record");
    await page.getByRole("button", { name: "Record this batch" }).waitFor();
    await hand.press("Record this batch");
    await page.getByText(/Written in row/).waitFor();
    // Nothing is at odds with the pane: the row's own formula gives its figure.
    expect(await page.getByText("The row shows").count()).toBe(0);
    // what becomes of it is one press away, the batch filled in
    await hand.press("Test its fuel");
    const batch = page.getByLabel("Batch", { exact: true }).and(page.locator("input"));
    await expect.poll(() => batch.inputValue()).toBe("B-118");

    await page.click("#plain-toggle");
    const row = page.locator("#plain tr", { hasText: "B-118" });
    await row.first().waitFor();
    // By hand: 91.5 x (2.63549 / 56.1 x 56.1053 + 7.6503) / 0.9 = 1046 g.
    expect(await row.first().innerText()).toMatch(/\b1046\b/);
    await page.click("#undo");
    await row.first().waitFor({ state: "detached" });
    expect(complaints).toEqual([]);
  });
});
