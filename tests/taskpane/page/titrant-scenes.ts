/** The titrants of the sample logbook in the titrant step, by keyboard: one taken, one kept. */
import type { Page } from "playwright-core";
import { type BenchHand, QuickHand } from "./bench";
import type { Look } from "./scenes";

/** The day on which the sample's first bottle is still within 1 %, and its fresh one two days old. */
export const titrantQuery = "book=sample&today=2026-09-30";

export async function takeTitrant(hand: BenchHand): Promise<void> {
  await hand.page.getByText("Kept in Titrants").first().waitFor();
  await hand.press(/^0\.09970 mol\/L KOH, bottle K-5/);
}

export async function keepTitrant(hand: BenchHand): Promise<void> {
  await hand.choose("How do you know its strength?", "Checked");
  await hand.type("KHP weighed", "0.5105");
  await hand.type("Corrected titre", "25.00");
  await hand.press("Keep this titrant in Titrants");
  await hand.type("Bottle", "K-7");
  await hand.tabTo("Made or checked on");
  // the order of day, month and year is the machine's own
  await hand.page.getByLabel("Made or checked on").fill("2026-09-30");
}

export async function titrantScenes(page: Page, look: Look): Promise<void> {
  const hand = new QuickHand(page);
  await page.getByRole("heading", { level: 2 }).waitFor();
  await takeTitrant(hand);
  await look("titrant, taken from Titrants");
  await keepTitrant(hand);
  await page.getByRole("button", { name: "Keep this titrant", exact: true }).waitFor();
  await look("titrant, to be kept");
  await hand.press("Keep this titrant");
  await page.getByText(/Written in row/).waitFor();
  await look("titrant, kept");
}
