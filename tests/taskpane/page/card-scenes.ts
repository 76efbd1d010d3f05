/** Every screen of the bench card, reached by keyboard, each in a state worth looking at. */
import type { Page } from "playwright-core";
import { QuickHand } from "./bench";
import type { Look } from "./scenes";

export const cardQuery = "task=card&book=sample";

/** Walks through the whole card once. */
export async function cardScenes(page: Page, look: Look): Promise<void> {
  const hand = new QuickHand(page);
  await page.getByRole("combobox", { name: "Batch" }).waitFor();
  await hand.choose("Batch", "B-117");
  await page.getByText("B-117: no acid value yet, so no dose.").waitFor();
  await look("no dose, no card");
  await hand.choose("Batch", "B-114");
  await page.getByText("Tick each step").waitFor();
  await look("imperial gallons");
  await hand.press("Make a sheet to print");
  await page.getByRole("button", { name: "Make this sheet" }).waitFor();
  await look("the card to print");
  await hand.press("Not now");
  await hand.choose("Units", "US");
  await hand.press(/^1\. Drain/, "Space");
  await hand.type("Methanol: what you put in", "7.1");
  await look("US gallons, a step done");
  await hand.choose("Units", "Metric");
  await hand.type("Number of washes", "4");
  await hand.pick("cloudy");
  await page.getByRole("button", { name: "Record how it went" }).waitFor();
  await look("metric, how it went");
}
