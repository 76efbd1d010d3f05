/** Every screen of the fuel task, reached by keyboard, each in a state worth looking at. */
import type { Page } from "playwright-core";
import { QuickHand } from "./bench";
import type { Look } from "./scenes";

export const fuelQuery = "task=fuel&book=sample";

/** From the batch to the meaning: an unwashed fuel of much soap, wet, cloudy in methanol. */
export async function fuelScenes(page: Page, look: Look): Promise<void> {
  const hand = new QuickHand(page);
  await page.getByRole("heading", { level: 2, name: /Batch/ }).waitFor();
  await hand.choose("Recorded batch", "B-114");
  await hand.pick("Not washed");
  await look("which batch, not washed");
  await hand.next("Acid value");
  await look("acid of unwashed fuel");
  await hand.next("Soap and base");
  await hand.type("Hydrochloric acid", "0.1");
  await hand.type("Fuel in the flask", "6");
  await hand.type("To the first end point", "0.40");
  await hand.type("From there to the second", "15.0");
  await hand.type("Burette step", "0.05");
  await look("0.1 typed for 0.01");
  await hand.type("Hydrochloric acid", "0.01");
  await hand.next("Water and trial");
  await hand.choose("How was the water measured?", "By drying");
  await hand.type("Dish, empty", "45.31");
  await hand.type("Dish and sample, before", "65.81");
  await hand.type("Dish and sample, dried and cool", "65.79");
  await hand.type("Balance step", "0.01");
  await hand.pick("oil at the bottom");
  await look("weighed water, a scale too coarse");
  await hand.choose("How was the water measured?", "By calcium");
  await look("by gas");
  await hand.choose("How was the water measured?", "By drying");
  await hand.next("What it means");
  await page.getByText(/^React it again, /).waitFor();
  await look("what it means");
  await hand.next("Record");
  await page.getByRole("button", { name: "Record this fuel" }).waitFor();
  await look("before it is recorded");
}
