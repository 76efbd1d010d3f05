/** Every screen of the titration task, reached by keyboard, each in a state worth looking at. */
import type { Page } from "playwright-core";
import { type BenchHand, fillBlank, fillOil, fillTitrant, fillTitres, QuickHand } from "./bench";

/** Called when a screen is ready. */
export type Look = (name: string) => Promise<void>;

const slip = {
  lot: "NQ-44",
  titres: ["2.40", "2.50", "2.45", "3.10", "2.45"],
  blanks: ["0.15", "0.10"],
  mass: "10.02",
} as const;

async function questions(hand: BenchHand, look: Look): Promise<void> {
  await hand.type("Strength", "0,1");
  await look("titrant, which tenth");
  await hand.choose("How do you know its strength?", "g/L");
  await hand.type("Strength", "1");
  await hand.pick("Same lye as the batch, assay unknown");
  await look("titrant, same lye");
  await hand.type("Strength", "1,234");
  await hand.tabTo("Accurate to ±");
  await look("titrant, refused");
}

async function measured(hand: BenchHand, look: Look): Promise<void> {
  await hand.pick("Measured");
  await hand.choose("Kind of oil", "Tallow");
  await hand.type("Oil measured", "5");
  await look("oil, solid");
  await hand.choose("Kind of oil", "Used");
  await hand.pick("Weighed");
  await hand.type("Oil measured", "9.5");
  await hand.type("Oil weighed", "10.02");
  await look("oil, at odds");
  await hand.type("Oil measured", "");
}

async function omit(hand: BenchHand, look: Look): Promise<void> {
  await look("replicates, suspect");
  await hand.press("Leave out Titre 4");
  await look("replicates, why omit");
  await hand.choose("Why leave out titre 4?", "went");
  await hand.press("Leave out titre 4");
  await look("replicates, omitted");
}

async function timer(hand: BenchHand, look: Look): Promise<void> {
  await hand.press(/^15 s/);
  await hand.tabTo("Volume used");
  await hand.page.waitForTimeout(1200);
  await hand.page.keyboard.press("Space");
  await look("replicates, timer paused");
}

/** Walks through the whole task once. */
export async function scenes(page: Page, look: Look): Promise<void> {
  const hand = new QuickHand(page);
  await page.getByRole("heading", { level: 2 }).waitFor();
  await look("titrant, new");
  await questions(hand, look);
  await fillTitrant(hand);
  await look("titrant");
  await hand.next("Oil");
  await fillOil(hand, slip);
  await measured(hand, look);
  await look("oil");
  await hand.next("Blank");
  await look("blank, new");
  await fillBlank(hand, slip);
  await look("blank");
  await hand.next("Replicates");
  await look("replicates, new");
  await timer(hand, look);
  await fillTitres(hand, slip);
  await omit(hand, look);
  await hand.next("Result");
  await look("result");
  await hand.next("Record");
  await page.getByRole("button", { name: "Record this titration" }).waitFor();
  await look("record");
  await hand.press("Record this titration");
  await page.getByRole("button", { name: "Next lot" }).waitFor();
  await look("recorded");
  await hand.press("Next lot");
  await hand.type("Lot", "=1+1");
  await hand.press("Earlier titrations");
  await page.getByRole("heading", { level: 2, name: "Earlier titrations" }).waitFor();
  await look("lots");
}
