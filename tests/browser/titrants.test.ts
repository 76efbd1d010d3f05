/** The titrants of the logbook in the titration task, in Chromium and by keyboard: offered, taken, kept. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { BenchHand, QuickHand } from "../taskpane/page/bench";
import { faultsOnTheWay } from "../taskpane/page/looks";
import { openChromium, type PaneBrowser } from "../taskpane/page/open-page";
import {
  keepTitrant,
  takeTitrant,
  titrantQuery,
  titrantScenes,
} from "../taskpane/page/titrant-scenes";
import { rarely } from "../wide";
import { hasBrowser } from "./browser";
import { lastRow, undo } from "./host-in-page";

describe.runIf(hasBrowser)("the titrants on record, in a browser", () => {
  let chromium: PaneBrowser;
  beforeAll(async () => {
    chromium = await openChromium();
  });
  afterAll(async () => {
    await chromium.close();
  });

  it("fill the step when one is chosen, and its own line says how old it is", async () => {
    const { page, complaints } = await chromium.open({}, titrantQuery);
    const hand = new QuickHand(page);
    await page.getByRole("heading", { level: 2 }).waitFor();
    await takeTitrant(hand);
    await page.getByText(/Going by its checks, it has lost 0\.8\d? % in 113 days/).waitFor();
    expect(await page.getByLabel("Bottle").inputValue()).toBe("K-5");
    expect(await page.getByLabel("Made or checked on").inputValue()).toBe("2026-09-15");
    expect(await page.getByLabel("Base").inputValue()).toBe("KOH");
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  it("take one more by keyboard alone, and undo takes the row back", async () => {
    const { page, complaints } = await chromium.open({}, titrantQuery);
    const hand = new BenchHand(page);
    await page.getByRole("heading", { level: 2 }).waitFor();
    const before = await lastRow(page, "Titrants");
    await keepTitrant(hand);
    await page.getByRole("button", { name: "Keep this titrant", exact: true }).waitFor();
    await hand.press("Keep this titrant");
    await page.getByText(/Written in row/).waitFor();
    expect(await lastRow(page, "Titrants")).toMatchObject({
      Titrant: "K-7",
      "How known": "KHP",
      "KHP 1 g": 0.5105,
      "Titre 1 mL": 25,
      "Blank mL": "neutralised",
    });
    await hand.press("Go on with the titration");
    await page.getByText(/^0\.09999 mol\/L KOH, bottle K-7/).waitFor();
    await undo(page);
    expect(await lastRow(page, "Titrants")).toEqual(before);
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  rarely("have no accessibility fault on any screen, in every look", async () => {
    expect(await faultsOnTheWay(chromium, titrantQuery, titrantScenes)).toEqual([]);
  });
});
