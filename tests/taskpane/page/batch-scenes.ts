/** Every screen of the batch task, reached by keyboard, each in a state worth looking at. */
import type { Page } from "playwright-core";
import { type BenchHand, QuickHand } from "./bench";
import type { Look } from "./scenes";

export async function fillOilOfBatch(
  hand: BenchHand,
  lots: readonly string[],
  amount = "100",
  batch = "B-118",
): Promise<void> {
  for (const lot of lots) {
    const name = new RegExp(`^${lot} `);
    // one of which nothing is left stands with all the others only
    if ((await hand.page.getByRole("checkbox", { name }).count()) === 0)
      await hand.press(/^Show all/);
    await hand.press(name, "Space");
  }
  await hand.type("Amount of oil", amount);
  // back to it: on from here the next to be called so is the task
  await hand.tabTo("Batch", "Shift+Tab");
  await hand.page.keyboard.press("Control+A");
  await hand.page.keyboard.type(batch);
}

export async function fillLye(hand: BenchHand): Promise<void> {
  await hand.type("Lye lot", "K-207");
  await hand.type("Assay of the lye", "90");
  await hand.press(/^Use 7 g\/L/);
}

export async function fillLimit(hand: BenchHand, limit = "5"): Promise<void> {
  await hand.type("Allowed acid", limit);
}

const ready = (page: Page) => page.getByRole("heading", { level: 2, name: /Oil/ }).waitFor();

async function mixes(hand: BenchHand, look: Look): Promise<void> {
  await fillOilOfBatch(hand, ["SW-17"]);
  await hand.type("Water in the oil", "0.09");
  await look("oil");
  await fillOilOfBatch(hand, ["NQ-41"]);
  await hand.type("Share of SW-17", "60");
  await look("oil, two lots by shares");
  await hand.pick("To a target");
  await hand.type("Target", "1.5");
  await look("oil, target out of reach");
  await hand.type("Target", "0.9");
  await look("oil, two lots to a target");
}

async function former(hand: BenchHand, look: Look): Promise<void> {
  // the charge, 700 g pure, and 0.9 % of it
  await hand.type("Your old amount", "706");
  await look("weigh-out, what used to be weighed");
  await hand.type("Your old amount", "");
}

/** SW-18 of the sample has a titre far from the others: no dose until somebody says so. */
export async function heldBackScenes(page: Page, look: Look): Promise<void> {
  const hand = new QuickHand(page);
  await ready(page);
  await hand.press(/^Show all/);
  await fillOilOfBatch(hand, ["SW-18"]);
  await look("oil, a lot not worth a dose yet");
  await hand.next("Lye");
  await fillLye(hand);
  await hand.next("Methanol");
  await fillLimit(hand);
  await hand.next("Weigh-out");
  await page.getByText("No dose yet").waitFor();
  await look("weigh-out held back");
  await hand.press("Use it all the same");
  await page.getByText("KOH, lot K-207, 90 %").waitFor();
  await look("weigh-out used all the same");
}

/** Walks through the whole task once. */
export async function batchScenes(page: Page, look: Look): Promise<void> {
  const hand = new QuickHand(page);
  await ready(page);
  await look("oil, new");
  await hand.press(/^Show all/);
  await mixes(hand, look);
  await hand.next("Lye");
  await look("lye, new");
  await fillLye(hand);
  await hand.pick("This same lot of lye");
  await look("lye, same as the titrant");
  await hand.next("Methanol");
  await look("methanol, new");
  await fillLimit(hand);
  await look("methanol");
  await hand.next("Weigh-out");
  await look("weigh-out of a blend");
  await hand.press("New batch");
  await look("leaving it?");
  await hand.press("Keep this one");
  await hand.pick("lb and oz as well");
  await former(hand, look);
  await hand.next("Record");
  await page.getByRole("button", { name: "Record this batch" }).waitFor();
  await look("record");
  await hand.press("Record this batch");
  await page.getByRole("button", { name: "Next batch" }).waitFor();
  await look("recorded");
  await hand.press("Next batch");
  await ready(page);
  await fillOilOfBatch(hand, ["TW-09"], "20");
  await hand.choose("Unit", "US");
  await hand.type("Oil temperature", "45");
  await look("oil, hot, US gallons");
  await hand.press("Choose lots from store");
  await hand.type("Acid at most", "1");
  await page.getByText(/The mix: \d/).waitFor();
  await look("oil, a mix from store");
  await hand.type("Acid at most", "0.1");
  await page.getByText(/has so little acid/).waitFor();
  await look("oil, no such mix in store");
  await hand.press(/^2 Lye/);
  await hand.choose("Base", "NaOCH3");
  await hand.type("Assay of the lye", "30");
  await hand.press(/^Use 0.5 % of the oil, refined/);
  await look("lye, methoxide solution");
  await hand.next("Methanol");
  await hand.pick("% by volume");
  await hand.type("Methanol", "22");
  await fillLimit(hand, "3");
  await hand.next("Weigh-out");
  await page.getByText(/No dose/).waitFor();
  await look("weigh-out refused");
  await hand.type("Allowed acid", "9");
  await look("weigh-out above a higher limit");
}
