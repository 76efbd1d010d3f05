/** The record and the hand behind it, in the titration task in Chromium and by keyboard. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { QuickHand } from "../taskpane/page/bench";
import { faultsOnTheWay } from "../taskpane/page/looks";
import { openChromium, type PaneBrowser } from "../taskpane/page/open-page";
import { recordQuery, recordScenes } from "../taskpane/page/record-scenes";
import { rarely } from "../wide";
import { hasBrowser } from "./browser";

describe.runIf(hasBrowser)("the usual scatter of the record, in a browser", () => {
  let chromium: PaneBrowser;
  beforeAll(async () => {
    chromium = await openChromium();
  });
  afterAll(async () => {
    await chromium.close();
  });

  it("is asked about once, holds a dose back, and gives it at a press that can be taken back", async () => {
    const { page, complaints } = await chromium.open({}, recordQuery);
    const hand = new QuickHand(page);
    const lye = page.getByText(/^Of this lye, for the acid/);
    await recordScenes(page, () => Promise.resolve());
    expect(await hand.hears()).toBe("Do not use it");
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: "Use it all the same" }).waitFor();
    expect(await lye.count()).toBe(0);
    await hand.press("Back");
    await hand.press("Do without them");
    await page.getByText(/counts as agreement/).waitFor();
    expect(await hand.hears()).toBe("Use earlier titrations");
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  rarely("has no accessibility fault, fits and can be touched, in every look", async () => {
    expect(await faultsOnTheWay(chromium, recordQuery, recordScenes)).toEqual([]);
  });
});
