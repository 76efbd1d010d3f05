/** What the record says in the titration task, by keyboard: asked about, used, and readings that are apart. */
import type { Page } from "playwright-core";
import { type BenchHand, fillBlank, fillOil, fillTitres, QuickHand } from "./bench";
import type { Look } from "./scenes";

/** The sample's titrations are the record. */
export const recordQuery = "book=sample&today=2026-09-30";

const apart = { lot: "NQ-44", titres: ["2.40", "2.60", "2.80"], blanks: ["0.15"] };

/** Made of the batch's own lye: the result is grams of it for each litre of oil, too. */
async function fillWeighedTitrant(hand: BenchHand): Promise<void> {
  await hand.choose("Base", "KOH");
  await hand.choose("How do you know its strength?", "g/L");
  await hand.type("Strength", "6.25");
  await hand.pick("Same lye as the batch, assay unknown");
  await hand.type("Smallest burette mark", "0.05");
}

export async function recordScenes(page: Page, look: Look): Promise<void> {
  const hand = new QuickHand(page);
  await page.getByRole("heading", { level: 2 }).waitFor();
  await fillWeighedTitrant(hand);
  await hand.next("Oil");
  await fillOil(hand, apart);
  await hand.next("Blank");
  await fillBlank(hand, apart);
  await hand.next("Replicates");
  await fillTitres(hand, apart);
  await page.getByText(/^Your usual scatter is/).waitFor();
  await look("replicates, the record asked about");
  await hand.press("Yes");
  await page.getByText(/your usual scatter explains/).waitFor();
  await look("replicates, by the record");
  await hand.next("Result");
  await page.getByRole("button", { name: "Use it all the same" }).waitFor();
  await look("result held back");
  await hand.press("Use it all the same");
  await page.getByText("You use it all the same.").waitFor();
  await look("result used all the same");
}
