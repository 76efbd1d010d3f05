/** Every screen of the logbook task, reached by keyboard, each in a state worth looking at. */
import type { Page } from "playwright-core";
import { type BenchHand, QuickHand } from "./bench";
import type { Look } from "./scenes";

export async function understand(hand: BenchHand): Promise<void> {
  await hand.page.getByText(/^The sheet Oil book/).waitFor();
  await hand.choose("K: KOH sol g/L", "Titrant strength, g");
  await hand.pick("Pure lye", "K: KOH sol g/L: of");
  await hand.pick("Pure lye", "Base charge: of");
  await hand.press("These are right");
  await hand.page.getByText(/Agreed: the columns/).waitFor();
}

const four = ["Corrected titre, mL", "Acid value, mg KOH/g", "FFA as oleic, %", "Lye to weigh, g"];

export async function chooseFour(hand: BenchHand): Promise<void> {
  for (const heading of four) await hand.press(heading, "Space");
  await hand.page.getByRole("button", { name: "Add these 4 columns" }).waitFor();
}

/** Walks through the whole task once. */
export async function logbookScenes(page: Page, look: Look): Promise<void> {
  const hand = new QuickHand(page);
  await page.getByText(/^The sheet Oil book/).waitFor();
  await look("understand, as guessed");
  await understand(hand);
  await look("understand, put right and agreed");
  await hand.press("Remember this in the workbook");
  await page.getByRole("button", { name: "Write it on a sheet" }).waitFor();
  await look("understand, to be remembered");
  await hand.next("Add columns");
  await look("add, offers");
  await chooseFour(hand);
  await look("add, planned");
  await hand.press("Add these 4 columns");
  await page.getByText(/Written in/).waitFor();
  await look("add, written");
  await hand.next("Re-check");
  await look("re-check, new");
  await hand.press("Re-check every row");
  await page.getByText(/Checked in \d/).waitFor();
  await look("re-check, found");
  await page.locator("summary", { hasText: /^Another acid/ }).press("Enter");
  await page.getByRole("button", { name: "Go to L59" }).waitFor();
  await look("re-check, one kind");
  await hand.press(/^Put \d+ figures of Oil book right/);
  await page.getByRole("button", { name: "Write it beside" }).waitFor();
  await look("re-check, to be mended");
  await hand.press("Report on a new sheet");
  await page.getByRole("button", { name: "Write this report" }).waitFor();
  await look("re-check, report");
}

/** A book in drops and cups, with methanol and water beside. */
export async function dropsScenes(page: Page, look: Look): Promise<void> {
  const hand = new QuickHand(page);
  await page.getByText(/^The sheet Oil book/).waitFor();
  await look("drops, as guessed");
  await hand.pick("Pure lye", "I: Base charge g/L: of");
  await hand.type("1 drop =", "0.05");
  await hand.type("1 cup of lye =", "190");
  await hand.type("Assay of the lye, for all rows", "90");
  await hand.press("These are right");
  await hand.next("Add columns");
  await look("drops, what is lacking");
  await hand.next("Re-check");
  await hand.press("Re-check every row");
  await page.getByText(/Checked in \d/).waitFor();
  await look("drops, methanol and water");
}
