/**
 * The batch task in Chromium: by keyboard alone from a recorded lot to a recorded batch, and what every
 * screen must hold.
 */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { BenchHand, QuickHand } from "../taskpane/page/bench";
import {
  batchScenes,
  fillLimit,
  heldBackScenes,
  fillLye,
  fillOilOfBatch,
} from "../taskpane/page/batch-scenes";
import { faultsOnTheWay } from "../taskpane/page/looks";
import { openChromium, type PaneBrowser } from "../taskpane/page/open-page";
import { rarely } from "../wide";
import { hasBrowser } from "./browser";
import { bookOf, lastRow, undo } from "./host-in-page";

const sample = "task=batch&book=sample";

async function toWeighOut(hand: BenchHand, lots: readonly string[]): Promise<void> {
  await hand.page.getByRole("heading", { level: 2, name: /Oil/ }).waitFor();
  await fillOilOfBatch(hand, lots);
  await hand.type("Water in the oil", "0.05");
  await hand.next("Lye");
  await fillLye(hand);
  await hand.next("Methanol");
  await fillLimit(hand);
  await hand.next("Weigh-out");
}

describe.runIf(hasBrowser)("the batch task in a browser", () => {
  let chromium: PaneBrowser;
  beforeAll(async () => {
    chromium = await openChromium();
  });
  afterAll(async () => {
    await chromium.close();
  });

  it("keeps a lot of lye in a table of its own, says so, and offers it once another is typed", async () => {
    const { page, complaints } = await chromium.open({}, sample);
    const hand = new QuickHand(page);
    const before = await bookOf(page);
    await page.getByRole("heading", { level: 2, name: /Oil/ }).waitFor();
    await hand.press(/^2 Lye/);
    await hand.type("Lye lot", "K-300");
    await hand.type("Assay of the lye", "89.5");
    await hand.press("Keep this lot of lye");
    await hand.press("Keep this lot");
    await page.getByText("Undo takes the row back.").waitFor();
    expect((await bookOf(page)).sheets.at(-1)?.name).toBe("LyeLots");
    await hand.type("Lye lot", "K-301");
    await page.getByRole("button", { name: "Use K-300, 89.5 %" }).waitFor();
    await undo(page);
    await expect.poll(() => bookOf(page)).toEqual(before);
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  it("goes by keyboard alone from a recorded lot to a row of Batches, and one undo takes it back", async () => {
    const { page, complaints } = await chromium.open({}, sample);
    const hand = new BenchHand(page);
    const before = await bookOf(page);
    await toWeighOut(hand, ["SW-17"]);
    // By hand: AV 56.1 x 0.0998 x (14.6/3 - 0.15) / 10.02 = 2.63549; 91.5 x (2.63573 + 7.65027) / 0.9.
    await page.getByText("1046", { exact: true }).waitFor();
    await page.getByText(/water 0\.05 % is low enough/).waitFor();
    await page.getByText(/1046 g ± \d+ g from the titration/).waitFor();
    expect(await bookOf(page)).toEqual(before);
    await hand.next("Record");
    await page.getByRole("button", { name: "Record this batch" }).waitFor();
    await hand.press("Record this batch");
    await page.getByText(/Written in row/).waitFor();
    expect(await hand.hears()).toBe("Next batch");

    expect(await lastRow(page, "Batches")).toMatchObject({
      Batch: "B-118",
      Lots: "SW-17",
      Amount: 100,
      Unit: "l",
      "Acid value mg KOH/g": expect.stringContaining("LOOKUP(2,1/((Titrations[Lot]=") as string,
      "Lye lot": "K-207",
      "Assay %": 90,
      "Catalyst g": expect.stringMatching(/^=IF\(COUNTA\(.*TITRE\.CATALYST/) as string,
      "Methanol ratio": 6,
      "Allowed FFA %": 5,
      "Water %": 0.05,
      Route: expect.stringContaining("[Water %]") as string,
    });
    await undo(page);
    expect(await bookOf(page)).toEqual(before);
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  it("says that a batch does not fit into the vessel where it is recorded and on its card, too", async () => {
    const { page } = await chromium.open({}, "task=batch&book=small-vessel");
    const hand = new QuickHand(page);
    await toWeighOut(hand, ["SW-17"]);
    // by hand: 100 L, and 91.5 kg x (1 - 2.6355/56.1 x 0.282468) x 6 x 32.042/867.5/0.7914 = 25.28 L
    const tooMuch = "Oil and methanol are 125.3 L, and the vessel holds 80.00 L: make less.";
    await page.getByText(tooMuch).waitFor();
    expect(await page.getByText(/water is not measured/).count()).toBe(0);
    await hand.next("Record");
    await page.getByRole("button", { name: "Record this batch" }).waitFor();
    expect(await page.getByText(tooMuch).count()).toBe(1);
    const card = await chromium.openIn(page.context(), "task=card&book=small-vessel");
    await new QuickHand(card.page).choose("Batch", "B-114");
    // nobody measured the water of that batch's oil
    await card.page.getByText(/The oil’s water is not measured: dry the oil/).waitFor();
    await card.page.getByText(/Oil and methanol are 14\d\.\d L, and the vessel holds 80/).waitFor();
    await page.context().close();
  });

  it("says at Oil and at the weigh-out that a lot has not so much left, and that it is too wet", async () => {
    const { page } = await chromium.open({}, sample);
    const hand = new QuickHand(page);
    await page.getByRole("heading", { level: 2, name: /Oil/ }).waitFor();
    // three of its lots are used up: they stand behind the press that shows all
    expect(await page.getByRole("checkbox", { name: /0 L left/ }).count()).toBe(0);
    await hand.press(/^Show all/);
    await page.getByRole("checkbox", { name: /^TW-09 .*, 0 L left/ }).waitFor();
    await fillOilOfBatch(hand, ["NQ-42"], "300");
    await hand.type("Water in the oil", "0.4");
    const lacking = page.getByText("Only 86 L of NQ-42 are left: you typed 300 L.");
    const wet = page.getByText(/Too wet: 0\.4 % water\. Dry the oil to 0\.06 % or less before/);
    await lacking.waitFor();
    await wet.waitFor();
    await hand.next("Lye");
    await fillLye(hand);
    await hand.next("Methanol");
    await fillLimit(hand);
    await hand.next("Weigh-out");
    await lacking.waitFor();
    await wet.waitFor();
    const [words, dose] = [await wet.boundingBox(), await page.locator(".amounts").boundingBox()];
    expect(words?.y).toBeLessThan(dose?.y ?? 0);
    await page.context().close();
  });

  it("asks for the oil’s temperature in °F where oil is measured in US gallons", async () => {
    const { page } = await chromium.open({}, sample);
    const hand = new QuickHand(page);
    await page.getByRole("heading", { level: 2, name: /Oil/ }).waitFor();
    await fillOilOfBatch(hand, ["SW-17"]);
    await hand.choose("Unit", "US gal");
    await hand.type("Oil temperature", "104");
    const box = page.getByRole("textbox", { name: /^Oil temperature\s?, °F$/ });
    await expect.poll(() => box.inputValue()).toBe("104");
    // by hand: 104 °F are 40 °C, and 100 US gal of 0.915 - 20 x 0.00066 = 0.9018 kg/L are 341.37 kg
    await page.getByText(/341\.4 kg/).waitFor();
    await hand.choose("Unit", "Litres");
    await expect.poll(() => box.inputValue()).toBe("104");
    await page.context().close();
  });

  it("chooses a mix from what is in store, and records each lot of it in Blends", async () => {
    const { page, complaints } = await chromium.open({}, sample);
    const hand = new QuickHand(page);
    await page.getByRole("heading", { level: 2, name: /Oil/ }).waitFor();
    await hand.type("Batch", "B-118");
    await hand.press("Choose lots from store");
    await hand.type("Amount of oil", "200");
    await hand.type("Acid at most", "1");
    await page.getByText(/The mix: \d/).waitFor();
    await hand.press("Use these lots");
    // the least acid in store is NQ-43's, and all of it are 150 L; then NQ-42
    expect(await hand.hears()).toBe("Use these lots");
    await page.getByText("NQ-42 takes what is left.").waitFor();
    await page.getByText("75.0 % NQ-43 with 25.0 % NQ-42 by mass").waitFor();
    await hand.next("Lye");
    // a lot that earlier batches were made with comes with its assay, and is offered no more
    await hand.press("Use K-207, 90 %");
    await expect.poll(() => page.getByRole("button", { name: "Use K-207, 90 %" }).count()).toBe(0);
    expect(await page.getByRole("textbox", { name: /^Assay of the lye/ }).inputValue()).toBe("90");
    await hand.press(/^Use 7 g\/L/);
    await hand.next("Methanol");
    await fillLimit(hand);
    await hand.next("Weigh-out");
    await hand.next("Record");
    await hand.press("Record this batch");
    await page.getByText(/Written in row/).waitFor();
    const blends = (await bookOf(page)).sheets.find(({ name }) => name === "Blends");
    expect(JSON.stringify(blends)).toMatch(/"B-118"[\s\S]*"NQ-43"[\s\S]*"B-118"[\s\S]*"NQ-42"/);
    expect(await lastRow(page, "Blends")).toMatchObject({ Lot: "NQ-42", Amount: 50, Unit: "l" });
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  it("shows at each step what hurts in it", async () => {
    const { page } = await chromium.open({}, sample);
    const hand = new QuickHand(page);
    await page.getByRole("heading", { level: 2 }).waitFor();
    for (const [step, mind] of [
      ["Oil", /work alone[\s\S]*erupts[\s\S]*heating alone/],
      ["Lye", /never the other way round[\s\S]*Base warms methanol[\s\S]*numbs/],
      ["Methanol", /at most 200 ppm[\s\S]*no drill[\s\S]*Plastic/],
      ["Weigh-out", /not a permission[\s\S]*Base warms methanol[\s\S]*no drill/],
      ["Record", /crude fuel[\s\S]*down a drain[\s\S]*weld/],
    ] as const) {
      if (step !== "Oil") await hand.next(step);
      await page.getByRole("heading", { level: 2, name: new RegExp(step) }).waitFor();
      expect(await page.locator(".cautions-now").innerText()).toMatch(mind);
    }
    await page.context().close();
  });

  it("shows no dose above the limit, and keeps the focus in the limit while a higher one is typed", async () => {
    const { page } = await chromium.open({}, sample);
    const hand = new QuickHand(page);
    await toWeighOut(hand, ["TW-09"]);
    await page.getByText("No dose:").waitFor();
    expect(await page.locator(".amounts").getByText("KOH, lot K-207").count()).toBe(0);
    await hand.type("Allowed acid", "9.5");
    expect(await hand.hears()).toMatch(/^Allowed acid/);
    await page.getByText("KOH, lot K-207, 90 %").waitFor();
    await page.keyboard.press("Control+A");
    await page.keyboard.press("Delete");
    await page.getByText("For a weigh-out").waitFor();
    expect(await hand.hears()).toMatch(/^Allowed acid/);
    await page.context().close();
  });

  rarely(
    "says aloud, from a place that was there before, when a higher limit gives a dose after all",
    async () => {
      const { page } = await chromium.open({}, sample);
      const hand = new QuickHand(page);
      await toWeighOut(hand, ["TW-09"]);
      const status = page.getByRole("status").filter({ hasText: "No dose:" });
      await status.waitFor();
      const place = await status.elementHandle();
      await hand.type("Allowed acid", "9.5");
      await page.getByText("there is a dose").waitFor();
      expect(await place?.textContent()).toContain("there is a dose: it stands below");
      await page.context().close();
    },
  );

  rarely(
    "holds a dose back from readings that are apart, and takes back that it is used all the same",
    async () => {
      const { page } = await chromium.open({}, sample);
      const hand = new QuickHand(page);
      const dose = page.locator(".amounts").getByText("KOH, lot K-207");
      const held: number[] = [];
      await heldBackScenes(page, async () => {
        held.push(await dose.count());
      });
      expect(held).toEqual([0, 0, 1]);
      expect(await hand.hears()).toBe("Do not use it");
      await page.keyboard.press("Enter");
      await page.getByText("No dose yet").waitFor();
      expect(await dose.count()).toBe(0);
      expect(await hand.hears()).toBe("Use it all the same");
      await page.context().close();
    },
  );

  rarely("shows on paper what is to be weighed, dark on light, and nothing to press", async () => {
    const { page } = await chromium.open({ colorScheme: "dark" }, sample);
    await toWeighOut(new QuickHand(page), ["SW-17"]);
    await page.emulateMedia({ media: "print", colorScheme: "dark" });
    await page.getByText("1046", { exact: true }).waitFor();
    const shown = await page.locator("button:visible:not(.unseen)").count();
    const ink = await page
      .locator(".amounts")
      .evaluate((amounts) => getComputedStyle(amounts).color.match(/\d+/g)?.map(Number));
    expect(shown).toBe(0);
    expect(Math.max(...(ink ?? [255]))).toBeLessThan(100);
    await page.context().close();
  });

  it("takes what was typed up again after the page is closed, in a country of decimal commas too", async () => {
    const german = `${sample}&locale=de-DE`;
    const { page } = await chromium.open({}, german);
    const hand = new QuickHand(page);
    await toWeighOut(hand, ["SW-17"]);
    await page.getByText("91,50", { exact: true }).waitFor();
    await page.close();
    const again = await chromium.openIn(page.context(), german);
    await again.page.getByRole("heading", { level: 2, name: /Weigh-out/ }).waitFor();
    await again.page.getByText("91,50", { exact: true }).waitFor();
    await page.context().close();
  });

  rarely("asks before a batch that is not recorded is left for a new one", async () => {
    const { page } = await chromium.open({}, sample);
    const hand = new QuickHand(page);
    await toWeighOut(hand, ["SW-17"]);
    await hand.press("New batch");
    expect(await hand.hears()).toBe("Keep this one");
    await page.keyboard.press("Enter");
    expect(await hand.hears()).toBe("New batch");
    await page.getByText("91.50", { exact: true }).waitFor();
    await page.keyboard.press("Enter");
    await hand.press("Start a new one");
    await page.getByRole("heading", { level: 2, name: /Oil/ }).waitFor();
    expect(await page.getByRole("checkbox", { checked: true }).count()).toBe(0);
    await page.context().close();
  });

  it("says what to do where no lot is recorded", async () => {
    const { page } = await chromium.open({}, "task=batch");
    await page.getByText(/No lot is recorded yet/).waitFor();
    await page.context().close();
  });

  it.each([
    ["the whole task", batchScenes],
    ["a dose held back", heldBackScenes],
  ] as const)(
    "has nothing axe objects to, nothing wider than the pane and nothing too small to touch, in every look: %s",
    async (_, scenes) => {
      expect(await faultsOnTheWay(chromium, sample, scenes)).toEqual([]);
    },
  );
});
