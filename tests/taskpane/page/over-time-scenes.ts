/** Every screen of the task Over time, reached by keyboard. */
import type { Page } from "playwright-core";
import { QuickHand } from "./bench";
import type { Look } from "./scenes";

export const overTimeQuery = "task=over-time&book=sample&today=2026-09-30";

export async function overTimeScenes(page: Page, look: Look): Promise<void> {
  const hand = new QuickHand(page);
  await page.getByRole("heading", { level: 3, name: "Blanks" }).waitFor();
  await look("over time");
  const figures = page.getByText("The figures", { exact: true });
  const count = await figures.count();
  for (let at = 0; at < count; at += 1) {
    await figures.nth(at).focus();
    await page.keyboard.press("Enter");
  }
  await look("over time, with figures");
  await hand.choose("Bottle", "K-6");
  await page.getByText(/more checks of K-6 make a line/).waitFor();
  await look("over time, too few");
  await hand.choose("Bottle", "K-5");
  await hand.press("Put these figures on a sheet");
  await page.getByRole("button", { name: "Make this sheet" }).waitFor();
  await look("on a sheet");
  await hand.press("Make this sheet");
  await page.getByText(/Written in the sheet Over time/).waitFor();
  await look("on a sheet, written");
}

/** An empty workbook: every part says what it wants. */
export async function overTimeNothing(page: Page, look: Look): Promise<void> {
  await page.getByText(/No titrant is on record/).waitFor();
  await look("over time, nothing yet");
}
