import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { root } from "../rules/sources-of";
import { violations } from "../taskpane/page/checks";
import { cases } from "../wide";
import { hasBrowser, type Served, serve } from "./browser";
import { goTo, gridIsReady } from "./workbench-page";

const charts = join(root, "tests/second-opinion/xlsx/charts.xlsx");

describe.runIf(hasBrowser)("the page around the grid", () => {
  let served: Served;
  beforeAll(async () => {
    served = await serve();
  });
  afterAll(() => served.close());

  /** The grid itself is drawn on a canvas; what stands in for it is checked with the rest. */
  const faults = (page: Page) => violations(page, ["#grid"]);

  const widest = (page: Page) => page.evaluate(() => document.documentElement.scrollWidth);

  it.each(cases([320], [900, 1400]))(
    "has no fault that axe can find, and fits, at %i pixels",
    async (width) => {
      const { page } = await served.open({ viewport: { width, height: 700 } });
      await page.goto(served.address);
      await gridIsReady(page);
      expect(await widest(page)).toBeLessThanOrEqual(width);
      expect(await faults(page)).toEqual([]);
      const toggle = page.locator("#plain-toggle");
      // on a telephone it stands in the menu of Sheet
      if (await toggle.isVisible()) await toggle.click();
      else {
        await page.click("#tools");
        await page.getByRole("menuitem", { name: "Text view" }).click();
      }
      await page.locator("#plain table").first().waitFor();
      expect(await faults(page)).toEqual([]);
    },
  );

  it.each(cases([320], [1400]))(
    "has none with the list of what a file keeps, and with the question before edits are lost, at %i pixels",
    async (width) => {
      const { page } = await served.open({ viewport: { width, height: 700 } });
      // then nothing is kept, and one is asked
      await page.addInitScript(() => {
        Object.defineProperty(window, "indexedDB", { value: undefined });
      });
      await page.goto(served.address);
      await page.waitForSelector("#save:enabled", { timeout: 60_000 });
      await page.locator("#chooser").setInputFiles(charts);
      await page.locator("#news li").first().waitFor();
      expect(await faults(page)).toEqual([]);
      await goTo(page, "C5");
      await page.keyboard.type("2.5", { delay: 20 });
      await page.keyboard.press("Enter");
      await page.locator("#standing").getByText("not kept yet").waitFor();
      await page.locator("#chooser").setInputFiles(charts);
      await page.locator("#ask button").first().waitFor();
      expect(await faults(page)).toEqual([]);
      expect(await widest(page)).toBeLessThanOrEqual(width);
    },
  );

  it("goes on where one task fails: the others open, and the one that failed says so", async () => {
    const { page } = await served.open({ viewport: { width: 1400, height: 700 } });
    // its part of the program never comes
    await page.route(/workbench\.share\.js\b/, (route) => route.abort());
    await page.goto(served.address);
    await gridIsReady(page);
    const tasks = page.getByRole("navigation", { name: "Tasks" });
    await tasks.getByRole("button", { name: "Share" }).click();
    await page.getByRole("alert").getByText("Something unexpected stopped “Share”").waitFor();
    expect(await faults(page)).toEqual([]);
    await tasks.getByRole("button", { name: "What if" }).click();
    await page.getByRole("navigation", { name: "Steps of the what-if table" }).waitFor();
  });

  it.each([320, 900, 1400])(
    "lays news over no cell and no name of a sheet, and moves neither, at %i pixels",
    async (width) => {
      const { page } = await served.open({ viewport: { width, height: 700 } });
      await page.goto(served.address);
      await gridIsReady(page);
      await page.waitForSelector("#save:enabled", { timeout: 60_000 });
      const top = async (of: string) => (await page.locator(of).boundingBox())?.y ?? -1;
      const bottom = async (of: string) => {
        const box = await page.locator(of).boundingBox();
        return box ? box.y + box.height : -1;
      };
      const cells = "#grid canvas[id^=univer-sheet-main]";
      const tabs = "#grid footer";
      await page.locator("#begin").press("Enter");
      await page.locator("#news-words").getByText("Your own logbook is open").waitFor();
      await expect
        .poll(async () => (await bottom(cells)) <= (await top("#news")), { timeout: 10_000 })
        .toBe(true);
      const isAbove = (await bottom("#news")) <= (await top(tabs));
      expect(isAbove || (await top("#news")) >= (await bottom(tabs))).toBe(true);
      const before = [await top(cells), await top(tabs)];
      await page.locator("#news-close").press("Enter");
      // the room is given back
      await expect.poll(async () => (await top(tabs)) - (await bottom(cells))).toBeLessThan(4);
      expect([await top(cells), await top(tabs)]).toEqual(before);
    },
  );
});
