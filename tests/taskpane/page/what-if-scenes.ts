/** Every screen of the what-if task, reached by keyboard, each in a state worth looking at. */
import type { Page } from "playwright-core";
import { type BenchHand, QuickHand } from "./bench";
import type { Look } from "./scenes";

export async function fillSizes(hand: BenchHand): Promise<void> {
  await hand.pick("Even steps");
  await hand.type("From", "50");
  await hand.type("To", "600");
  await hand.type("Step", "50");
}

/** What if begins from the lot titrated last, where nobody has typed before the lots were read: it is unticked. */
export async function untickLots(hand: BenchHand): Promise<void> {
  await hand.page.getByText("Recorded lots").waitFor();
  for (const box of await hand.page.getByRole("checkbox", { checked: true }).all())
    await box.uncheck();
}

export async function fillLye(hand: BenchHand): Promise<void> {
  await hand.type("Assay of the lye", "90");
  await hand.type("Base charge, pure", "0.765");
}

async function sizes(hand: BenchHand, look: Look): Promise<void> {
  await look("sizes, new");
  await hand.type("Batch sizes", "50 100,200,300");
  await hand.tabTo("Oil temperature");
  await look("sizes, refused");
  await hand.type("Batch sizes", "");
  await hand.choose("Kind of oil", "Tallow");
  await look("sizes, solid");
  await hand.choose("Unit", "US");
  await fillSizes(hand);
  await hand.choose("Kind of oil", "Used");
  await look("sizes, US gallons in steps");
  await hand.choose("Unit", "Lit");
}

async function bases(hand: BenchHand, look: Look): Promise<void> {
  await hand.pick("Bases");
  await hand.type("Acid value", "4");
  for (const [base, assay, charge] of [
    ["KOH", "90", "0.765"],
    ["NaOH", "98", "0.546"],
  ]) {
    await hand.press(new RegExp(`^${base ?? ""},`), "Space");
    await hand.page.keyboard.press("Tab");
    await hand.type("Assay of the lye", assay ?? "");
    await hand.page.keyboard.press("Tab");
    await hand.type("Base charge, pure", charge ?? "");
  }
  await look("compare, bases");
  await hand.next("Table");
  await look("table, bases");
  await hand.press("Back");
}

/** Walks through the whole task once. */
export async function whatIfScenes(page: Page, look: Look): Promise<void> {
  const hand = new QuickHand(page);
  await page.getByRole("heading", { level: 2 }).waitFor();
  await sizes(hand, look);
  await hand.next("Compare");
  await look("compare, new");
  await hand.next("Table");
  await look("table, wanted");
  await hand.press("Back");
  await bases(hand, look);
  await hand.pick("Acid values");
  await hand.type("Acid values to compare", "0.5 2 5 12");
  await fillLye(hand);
  await hand.press("Published base charges of KOH");
  await look("compare, acid values");
  await hand.next("Table");
  await look("table");
  await hand.next("Write");
  await page.getByRole("button", { name: "Write this table" }).waitFor();
  await look("write");
  await hand.pick("One formula that spills");
  await hand.pick("The selected cell");
  await page.getByRole("button", { name: "Write this formula" }).waitFor();
  await look("write, one formula here");
  await hand.pick("A table of formulas");
  await page.getByRole("button", { name: "Write this table" }).waitFor();
  await hand.press("Write this table");
  await page.getByText(/Written in/).waitFor();
  await look("written");
}

/** With recorded lots beside it. */
export async function whatIfLotScenes(page: Page, look: Look): Promise<void> {
  const hand = new QuickHand(page);
  await page.getByRole("heading", { level: 2 }).waitFor();
  await hand.type("Batch sizes", Array.from({ length: 50 }, (_, at) => 20 * (at + 1)).join(" "));
  await hand.next("Compare");
  await page.getByText("Recorded lots").waitFor();
  const lots = page.getByRole("group", { name: /^Recorded lots/ });
  const usable = lots.locator("input:not([disabled])");
  for (const at of [0, 1]) await usable.nth(at).check();
  await hand.type(
    "Acid values to compare",
    Array.from({ length: 10 }, (_, at) => 0.5 * (at + 1)).join(" "),
  );
  await fillLye(hand);
  await look("compare, lots");
  await hand.next("Table");
  await look("table, lots and many");
  await hand.next("Write");
  await page.getByRole("button", { name: "Write this table" }).waitFor();
  await look("write, lots");
  await hand.press("Back");
  await hand.press("Back");
  await hand.pick("Assays");
  await hand.pick("Of a recorded lot");
  await look("compare, one lot");
  await hand.choose("Lot", "SW-18");
  await look("compare, a lot not worth a dose yet");
  await hand.press("Use SW-18 all the same");
  await look("compare, a lot used all the same");
}
