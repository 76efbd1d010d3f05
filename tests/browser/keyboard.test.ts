/** The workbench page by keyboard alone, and as a screen reader has it: the embedded grid included. */
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { violations } from "../taskpane/page/checks";
import { hasBrowser, type Served, serve } from "./browser";
import { gridIsReady } from "./workbench-page";

/** Where the keyboard is: its name and whether it can be seen; "page" when it has left everything. */
const focused = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const at = document.activeElement;
    if (!(at instanceof HTMLElement) || at === document.body) return "page";
    const { x, y, width } = at.getBoundingClientRect();
    const isSeen = x >= 0 && y >= 0 && width > 0;
    return `${at.ariaLabel ?? at.textContent}${isSeen ? "" : " (not to be seen)"}`.trim();
  });

async function walk(page: Page, key: string, most: number): Promise<string[]> {
  const names: string[] = [];
  while (names.length < most && names.at(-1) !== "page") {
    await page.keyboard.press(key);
    names.push(await focused(page));
  }
  return names;
}

const grid = [
  "Go to cell",
  "Taller formula line",
  "New sheet",
  "All sheets",
  "Batches",
  "Smaller",
  "Larger",
  "100%",
];
const tasks = [
  "This cell",
  "Titrate",
  "Batch",
  "Card",
  "Fuel",
  "What if",
  "Logbook",
  "Over time",
  "Share",
  "My bench",
];

describe.runIf(hasBrowser)("the workbench by keyboard", () => {
  let served: Served;
  let page: Page;
  beforeAll(async () => {
    served = await serve();
    ({ page } = await served.open({ viewport: { width: 1400, height: 850 } }));
    await page.goto(served.address);
    await gridIsReady(page);
    await page.waitForSelector("#save:enabled", { timeout: 60_000 });
    await page.locator("#pane nav button").first().waitFor();
  });
  afterAll(() => served.close());

  const objected = async (width: number): Promise<void> => {
    await page.setViewportSize({ width, height: 850 });
    await expect.poll(() => page.evaluate(() => innerWidth)).toBe(width);
    expect(await violations(page)).toEqual([]);
  };

  it("has nothing that axe objects to, grid and all, at 1400 pixels", () => objected(1400));

  it("goes with Tab from the bar over the grid's buttons through the pane and out of the page", async () => {
    await page.locator("#open").focus();
    const names = await walk(page, "Tab", 40);
    const bar = ["Save", "Undo", "Redo", "Sheet", "Text view"];
    expect(names).toEqual([
      ...bar,
      ...grid,
      ...tasks,
      "Help for CATALYST",
      "Help and guides",
      "page",
    ]);
  });

  it("goes back with Shift+Tab from the pane to the bar", async () => {
    await page.locator("#pane").focus();
    expect(await walk(page, "Shift+Tab", grid.length + 1)).toEqual([
      ...[...grid].reverse(),
      "Text view",
    ]);
  });

  it("has the name of every task clear of the frame of its button", async () => {
    const room = await page.locator("#pane nav button").evaluateAll((buttons) =>
      buttons.map((button) => {
        const words = document.createRange();
        words.selectNodeContents(button);
        const [inner, outer] = [words.getBoundingClientRect(), button.getBoundingClientRect()];
        return Math.min(inner.left - outer.left, outer.right - inner.right);
      }),
    );
    expect(room).toHaveLength(tasks.length);
    expect(Math.min(...room)).toBeGreaterThanOrEqual(3);
  });

  it("has nothing that axe objects to, grid and all, at 320 pixels", () => objected(320));

  it("leaves the formula line for the pane at F6, and comes back to it", async () => {
    await page.setViewportSize({ width: 1400, height: 850 });
    await page.mouse.click(400, 60);
    // the grid takes the caret there a moment after the press, and its editor once more after that
    await expect.poll(() => focused(page), { timeout: 20_000 }).toMatch(/^(Formula line|Cell)/);
    await page.waitForTimeout(500);
    await page.keyboard.press("F6");
    await expect.poll(() => focused(page), { timeout: 20_000 }).toBe("Pane");
    await page.keyboard.press("F6");
    await expect.poll(() => focused(page), { timeout: 20_000 }).toMatch(/^(Formula line|Cell)/);
  });
});
