/** The task Over time in Chromium, by keyboard: sentences, charts, and the sheet it makes. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { faultsOnTheWay } from "../taskpane/page/looks";
import { openChromium, type PaneBrowser } from "../taskpane/page/open-page";
import { overTimeNothing, overTimeQuery, overTimeScenes } from "../taskpane/page/over-time-scenes";
import { cases } from "../wide";
import { hasBrowser } from "./browser";
import { bookOf, undo } from "./host-in-page";

describe.runIf(hasBrowser)("the task Over time in a browser", () => {
  let chromium: PaneBrowser;
  beforeAll(async () => {
    chromium = await openChromium();
  });
  afterAll(async () => {
    await chromium.close();
  });

  it("goes by keyboard alone from the sentences to a sheet, and undo takes it back whole", async () => {
    const { page, complaints } = await chromium.open({}, overTimeQuery);
    await page.getByRole("heading", { level: 3, name: "Blanks" }).waitFor();
    const before = await bookOf(page);
    await overTimeScenes(page, () => Promise.resolve());
    const after = await bookOf(page);
    expect(after.sheets.map(({ name }) => name)).toContain("Over time");
    await undo(page);
    expect(await bookOf(page)).toEqual(before);
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  it("says each chart in words to who cannot see it", async () => {
    const { page } = await chromium.open({}, overTimeQuery);
    await page.getByRole("heading", { level: 3, name: "Blanks" }).waitFor();
    const spoken = await page
      .locator("svg[role=img]")
      .evaluateAll((all) => all.map((each) => each.getAttribute("aria-label")));
    expect(spoken).toHaveLength(6);
    expect(spoken[5]).toMatch(/against acid value of the oil, mg KOH\/g: B-112 1\.29, 0\.\d+;/);
    expect(spoken[1]).toMatch(/^Blanks: mean blank of a titration, \d+ from 1 Sep 2026/);
    await page.context().close();
  });

  it.each(
    cases(
      [[overTimeQuery, overTimeScenes]] as const,
      [["task=over-time", overTimeNothing]] as const,
    ),
  )(
    "has no accessibility fault on any screen, fits and can be touched, in every look: %s",
    async (query, walk) => {
      expect(await faultsOnTheWay(chromium, query, walk)).toEqual([]);
    },
  );
});
