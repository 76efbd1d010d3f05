/** Rows that others look up are not deleted unasked. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { violations } from "../taskpane/page/checks";
import { hasBrowser, type Served, serve } from "./browser";
import { at, goTo, gridIsReady, openSheet, paneSays } from "./workbench-page";

describe.runIf(hasBrowser)("deleting a row of Titrations on the page", () => {
  let served: Served;
  beforeAll(async () => {
    served = await serve();
  });
  afterAll(() => served.close());

  it.each([320, 1400])("asks, naming the batches of its lot, at %i px", async (width) => {
    const { page, complaints } = await served.open({ viewport: { width, height: 760 } });
    await page.goto(served.address);
    await gridIsReady(page);
    const deleteRow = async () => {
      await page.focus("#tools");
      await page.keyboard.press("Enter");
      await page.getByRole("menuitem", { name: "Delete rows" }).press("Enter");
    };
    await openSheet(page, "Titrations");
    await goTo(page, at("Titrations", "Lot", 1));
    await paneSays(page, "NQ-41");
    await deleteRow();
    const ask = page.locator("#ask-act");
    await ask.getByText(/^Batch(es)? .* uses? lot NQ-41: .* acid value will be gone\./).waitFor();
    expect(await violations(page)).toEqual([]);
    await page.keyboard.press("Escape");
    await ask.waitFor({ state: "hidden" });
    await goTo(page, at("Titrations", "Lot", 1));
    await paneSays(page, "NQ-41");
    await deleteRow();
    await ask.getByRole("button", { name: "Delete" }).click();
    await page.locator("#news-words").getByText("Row 4 of Titrations deleted.").waitFor();
    await goTo(page, at("Titrations", "Lot", 1));
    await paneSays(page, "SW-17");
    expect(complaints).toEqual([]);
  });
});
