/** The screens of the task of sharing, reached by keyboard. */
import type { Page } from "playwright-core";
import { QuickHand } from "./bench";
import type { Look } from "./scenes";

export async function shareScenes(page: Page, look: Look): Promise<void> {
  const hand = new QuickHand(page);
  await page.getByRole("button", { name: "Partner copy", disabled: false }).waitFor();
  await look("share, to choose");
  await hand.press("Partner copy");
  await page.getByText("The copy is made.").waitFor();
  await look("share, made");
}

/** While somebody is typing in a cell, no copy can be made of the file. */
export async function refusedShareScenes(page: Page, look: Look): Promise<void> {
  const hand = new QuickHand(page);
  await page.getByRole("button", { name: "Partner copy", disabled: false }).waitFor();
  await hand.press("Partner copy");
  await page.getByText(/A cell is being edited/).waitFor();
  await look("share, refused");
}
