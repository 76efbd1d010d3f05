/**
 * A day at the bench, by keyboard alone and by touch: three lots under one titrant and one set of blanks, a batch of 55
 * US gallons of two of them, a table over its sizes and back, its card. The presses are counted; before
 * this line was made there were 173 from the first lot to the row of the batch (tests/measured/walks.md).
 */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { screenFaults } from "../taskpane/page/checks";
import { CountedHand } from "../taskpane/page/counted";
import { openChromium, type PaneBrowser } from "../taskpane/page/open-page";
import { hasBrowser } from "./browser";
import { bookOf, lastRow } from "./host-in-page";

const pressesBefore = 173;

const day = [
  { lot: "SW-41", mass: "10.02", titres: ["2.40", "2.50", "2.45"] },
  { lot: "NQ-12", mass: "10.05", titres: ["3.10", "3.15", "3.10"] },
  { lot: "TW-03", mass: "9.98", titres: ["1.90", "1.95", "1.90"] },
] as const;

/** From the oil to the recorded row. */
async function titrate(hand: CountedHand, slip: (typeof day)[number], blank?: string) {
  await hand.isOn("Lot");
  await hand.type(slip.lot);
  await hand.press("Enter");
  await hand.isOn("Oil weighed");
  await hand.type(slip.mass);
  await hand.press("Enter");
  await hand.isOn("Volume used");
  if (blank !== undefined) {
    await hand.page.getByRole("heading", { level: 2, name: /Blank/ }).waitFor();
    await hand.type(blank);
    await hand.press("Enter");
    await hand.press("Enter");
  }
  await hand.page.getByRole("heading", { level: 2, name: /Replicates/ }).waitFor();
  await hand.isOn("Volume used");
  for (const titre of slip.titres) {
    await hand.type(titre);
    await hand.press("Enter");
  }
  await hand.press("Enter");
  await hand.isOn(/^Result/);
  await hand.press("Enter");
  await hand.isOn("Record this titration");
  await hand.press("Enter");
  await hand.isOn("Next lot");
}

type By = "keys" | "touch";

/** By Tab and a key, or by a finger. */
async function choose(hand: CountedHand, by: By, name: string | RegExp, key: "Enter" | "Space") {
  if (by === "touch") return hand.tap(name);
  await hand.to(name);
  await hand.press(key);
}

/** Three lots, then a batch of two of them, to its row. */
async function theDay(hand: CountedHand, by: By): Promise<string[]> {
  const { page } = hand;
  const faults: string[] = [];
  await page.getByRole("button", { name: "Titrate" }).waitFor();
  await choose(hand, by, "Titrate", "Enter");
  for (const [at, slip] of day.entries()) {
    await titrate(hand, slip, at === 0 ? "0.15" : undefined);
    // the blank of the first is in every row
    expect(await lastRow(page, "Titrations")).toMatchObject({
      Lot: slip.lot,
      "Molarity mol/L": 0.1,
      "Blank 1 mL": 0.15,
      "Mass g": Number(slip.mass),
      "Titre 3 mL": Number(slip.titres[2]),
      "Read to mL": 0.05,
      "Titrant ± %": 1,
    });
    if (at < 2) await hand.press("Enter");
  }
  faults.push(...(await screenFaults(page, 320)));
  await choose(hand, by, "Batch of this lot", "Enter");
  await hand.isOn("Batch");
  await hand.type("B-1");
  faults.push(...(await screenFaults(page, 320)));
  await choose(hand, by, /^SW-41/, "Space");
  await hand.press("Enter");
  await hand.isOn(/^Share/);
  await hand.type("60");
  await hand.press("Enter");
  await hand.isOn(/^Weigh-out/);
  await page
    .getByText(/^My bench: KOH lot K-207 90 % · charge 7 g\/L, pure/)
    .last()
    .waitFor();
  // in the gallons it was asked in: 40 % of 55, and methanol by hand: 190.50 kg less its acid, 6 to 1
  const amounts = await page.locator(".amounts").first().innerText();
  expect(amounts).toMatch(/33\.00\s+US gal[\s\S]*22\.00\s+US gal[\s\S]*US gal at 20 °C/);
  faults.push(...(await screenFaults(page, 320)));
  await hand.press("Enter");
  await hand.isOn("Record this batch");
  await hand.press("Enter");
  await hand.isOn("Next batch");
  expect(hand.presses).toBeLessThanOrEqual(pressesBefore / 2);
  // by hand: 55 x 3.785411784 L at 0.915 kg/L is 190.50 kg; 7 g/L of pure base is 0.765 % of it
  expect(await lastRow(page, "Batches")).toMatchObject({
    Batch: "B-1",
    Amount: 55,
    "Assay %": 90,
    "Methanol ratio": 6,
    "Allowed FFA %": 3,
  });
  return faults;
}

describe.runIf(hasBrowser)("a day at the bench", () => {
  let chromium: PaneBrowser;
  beforeAll(async () => {
    chromium = await openChromium();
  });
  afterAll(async () => {
    await chromium.close();
  });

  it("goes from three lots to a batch of two of them in at most half the presses of before", async () => {
    const { page, complaints } = await chromium.open(
      { viewport: { width: 320, height: 640 } },
      "task=pane&book=bench",
    );
    const hand = new CountedHand(page);
    const faults = await theDay(hand, "keys");

    // a table over the sizes of this batch, and its column back: its lots stay
    await hand.to("Batch");
    await hand.press("Shift+Tab");
    await page.getByRole("button", { name: "What if", exact: true }).first().click();
    await page.getByRole("textbox", { name: /^Batch sizes/ }).waitFor();
    await expect
      .poll(() => page.getByRole("textbox", { name: /^Batch sizes/ }).inputValue())
      .toBe("27.5 55 110");
    await page.getByRole("button", { name: "Next: Table" }).click();
    // of the mix in the vessel, by hand: (0.6 x 1.76667/9.98 + 0.4 x 2.3/10.02) x 5.61
    await page.getByRole("columnheader", { name: "1.11", exact: true }).waitFor();
    faults.push(...(await screenFaults(page, 320)));
    await page.getByRole("button", { name: "Use this in Batch" }).click();
    await page.getByRole("checkbox", { name: /^SW-41/, checked: true }).waitFor();
    await page.getByRole("checkbox", { name: /^TW-03/, checked: true }).waitFor();
    expect(faults).toEqual([]);
    expect(complaints).toEqual([]);
  });

  it("goes the same by touch, and what is otherwise this time is put back or kept for good", async () => {
    const { page, complaints } = await chromium.open(
      { viewport: { width: 320, height: 640 }, hasTouch: true },
      "task=pane&book=bench",
    );
    const hand = new CountedHand(page);
    expect(await theDay(hand, "touch")).toEqual([]);
    const assay = page.getByRole("textbox", { name: /^Assay of the lye/ });
    await hand.tap("Next batch");
    await page.getByText(/^My bench: KOH lot/).tap();
    await hand.tap("Change this time");
    await assay.fill("85");
    await page.getByText("My bench says Assay of the lye 90 %.").waitFor();
    await hand.tap("Use My bench");
    await expect.poll(() => assay.inputValue()).toBe("90");
    await assay.fill("85");
    await page.getByText("holds for this time only").waitFor();
    await page.getByText("Changed for good: Assay of KOH 90, then 85.").waitFor();
    // one press, and it is in the workbook
    await hand.tap("Keep for good in My bench");
    await page.getByText("Kept for good on the sheet My bench.").waitFor();
    const kept = (await bookOf(page)).sheets.find(({ name }) => name === "My bench");
    expect(JSON.stringify(kept)).toMatch(/"Assay of KOH"[\s\S]{0,200}\b85\b/);
    expect(complaints).toEqual([]);
  });
});
