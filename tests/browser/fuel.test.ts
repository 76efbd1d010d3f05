/** The fuel task in Chromium: by keyboard alone from a batch to a row of `Fuel`, washed and unwashed. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { BenchHand } from "../taskpane/page/bench";
import { fuelQuery, fuelScenes } from "../taskpane/page/fuel-scenes";
import { faultsInEveryLook, faultsOnTheWay } from "../taskpane/page/looks";
import { openChromium, type PaneBrowser } from "../taskpane/page/open-page";
import { rarely } from "../wide";
import { hasBrowser } from "./browser";
import { bookOf, lastRow, undo } from "./host-in-page";

describe.runIf(hasBrowser)("the fuel task in a browser", () => {
  let chromium: PaneBrowser;
  beforeAll(async () => {
    chromium = await openChromium();
  });
  afterAll(async () => {
    await chromium.close();
  });

  it("goes by keyboard alone from a recorded batch to a row of Fuel, and one undo takes it back", async () => {
    const { page, complaints } = await chromium.open({}, fuelQuery);
    const hand = new BenchHand(page);
    await page.getByRole("heading", { level: 2, name: /Batch/ }).waitFor();
    const before = await bookOf(page);
    await hand.choose("Recorded batch", "B-114");
    await hand.pick("Washed");
    await hand.type("Number of washes", "3");
    await hand.next("Acid value");
    for (const [field, text] of [
      ["Titrant strength", "0.1"],
      ["Fuel in each flask", "20"],
      ["Blank", "0.10"],
      ["Titre 1", "1.45"],
      ["Titre 2", "1.50"],
      ["Titre 3", "1.45"],
      ["Burette step", "0.05"],
      ["Balance step", "0.01"],
    ] as const) {
      await hand.type(field, text);
    }
    // 56.1 × 0.1 × (1.46667 − 0.10) / 20
    await page.getByText("0.383 ± 0.0", { exact: false }).waitFor();
    await page.getByText(/Below: at least 95 % sure to be under the limit of 0.5/).waitFor();
    await hand.next("Soap and base");
    await hand.type("Hydrochloric acid", "0.01");
    await hand.type("Fuel in the flask", "100");
    await hand.type("From there to the second", "0.30");
    await hand.type("Blank to the same yellow", "0.10");
    await page.getByText(/Below: at least 95 % sure to be under the limit of 5/).waitFor();
    await hand.next("Water and trial");
    await hand.type("Water in the fuel", "0.03");
    await hand.pick("clear");
    await hand.next("What it means");
    await page.getByText("Nothing that was measured stands against it.").waitFor();
    // no field is wanted there, and the step that is said is this one
    await page.getByRole("status").filter({ hasText: "What it means 5 of 6" }).waitFor();
    await hand.next("Record");
    await page.getByRole("button", { name: "Record this fuel" }).waitFor();
    expect(await bookOf(page)).toEqual(before);
    await hand.press("Record this fuel");
    await page.getByText(/Written in row/).waitFor();
    expect(await lastRow(page, "Fuel")).toMatchObject({
      Batch: "B-114",
      Washes: 3,
      "Acid titre 2 mL": 1.5,
      "Acid blank mL": 0.1,
      "Soap titre mL": 0.3,
      "HCl mol/L": 0.01,
      "Water %": 0.03,
      "Methanol trial": "clear",
      "Metal verdict": expect.stringContaining("TITRE.AGAINSTLIMIT") as string,
    });
    await undo(page);
    expect(await bookOf(page)).toEqual(before);
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  it("is opened from a bench card in one press, and asks before what is under way is lost", async () => {
    const { page, complaints } = await chromium.open({}, "task=pane&book=sample");
    const hand = new BenchHand(page);
    const openFor = async (batch: string): Promise<void> => {
      await hand.press("Card");
      // a button of the same name stands in the bar: the list comes when the batches were read
      await page.getByRole("combobox", { name: "Batch" }).waitFor();
      await hand.choose("Batch", batch);
      await hand.press("Test its fuel");
    };
    const batch = page.getByLabel("Batch", { exact: true }).and(page.locator("input"));
    await openFor("B-114");
    await expect.poll(() => batch.inputValue()).toBe("B-114");
    // its row says three washes and 108.5 L, in the gallons of its card: 108.5 / 4.54609
    const washes = page.getByLabel("Number of washes").and(page.locator("input:visible"));
    expect(await washes.inputValue()).toBe("3");
    expect(await page.getByLabel("How much fuel").inputValue()).toBe("23.867");
    await hand.press(/^4 Water and trial/);
    await page.getByText("From the bench card of B-114: clear.").waitFor();
    await hand.press(/^2 Acid value/);
    await hand.type("Titre 1", "1.45");
    await openFor("B-115");
    await page.getByText("The fuel of B-114 is not recorded, and would be lost.").waitFor();
    expect(await hand.hears()).toBe("Go on with B-114");
    expect(await faultsInEveryLook(page)).toEqual([]);
    await page.keyboard.press("Enter");
    await expect.poll(() => page.getByText(/would be lost/).count()).toBe(0);
    expect(await page.getByLabel("Titre 1").inputValue()).toBe("1.45");
    await openFor("B-115");
    await hand.press("Start B-115");
    await expect.poll(() => batch.inputValue()).toBe("B-115");
    await expect.poll(() => page.getByLabel("Base", { exact: true }).inputValue()).toBe("NaOH");
    await hand.pick("Not washed");
    await hand.press("New fuel");
    await page.getByText("This fuel is not recorded, and would be lost.").waitFor();
    await page.keyboard.press("Enter");
    expect(await hand.hears()).toBe("New fuel");
    await hand.press("New fuel");
    await hand.press("Start a new one");
    await expect.poll(() => batch.inputValue()).toBe("");
    expect(await hand.hears()).toBe("New fuel");
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  rarely(
    "has no accessibility fault on any screen, fits and can be touched, in every look",
    async () => {
      expect(await faultsOnTheWay(chromium, fuelQuery, fuelScenes)).toEqual([]);
    },
  );
});
