/** The menu of the button Sheet and what it opens can be read, under the mouse and beside the news too. */
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { bookOf } from "../xlsx/files";
import { hasBrowser, type Served, serve } from "./browser";
import { gridIsReady, openBytes } from "./workbench-page";

/** How much lighter one of two colours is than the other (WCAG 2.2, relative luminance). */
function contrast(colours: readonly string[]): number {
  const [dark = 0, light = 0] = colours
    .map((colour) => {
      const [red = 0, green = 0, blue = 0] = (colour.match(/[\d.]+/g) ?? [])
        .map((part) => Number(part) / 255)
        .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
      return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
    })
    .sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}

const words = ["Lot", "BL-03", "NQ-41", "NQ-42", "SW-17", "SW-19", "TW-09", "TW-10", "TW-11"];
const rows = words
  .map((word, at) => [String(at + 1), word] as const)
  .map(([row, word]) => `<row r="${row}"><c r="A${row}" t="str"><v>${word}</v></c></row>`)
  .join("");

const menu = async (page: Page) => {
  await page.focus("#tools");
  await page.keyboard.press("Enter");
  return page.getByRole("menuitem", { name: "Find" });
};

describe.runIf(hasBrowser)("what the button Sheet opens", () => {
  let served: Served;
  beforeAll(async () => {
    served = await serve();
  });
  afterAll(() => served.close());

  it.each([320, 1400])("can be read at %i pixels", async (width) => {
    const { page } = await served.open({ viewport: { width, height: 640 } });
    await page.goto(served.address);
    await gridIsReady(page);
    await openBytes(page, "seen.xlsx", bookOf(rows));
    const find = await menu(page);
    await find.hover();
    const colours = () =>
      find.evaluate((item) => {
        const { color, backgroundColor } = getComputedStyle(item);
        return [color, backgroundColor];
      });
    await expect.poll(async () => (await colours())[1]).not.toMatch(/, 0\)$/);
    expect(contrast(await colours())).toBeGreaterThan(4.5);
    await page.keyboard.press("Escape");
    await (await menu(page)).press("Enter");
    // the news of the file that was opened still stands there
    expect(await page.locator("#news-words").getByText("is open.").isVisible()).toBe(true);
    const onTop = (words: string) =>
      page.getByLabel(words).evaluate((field) => {
        const { left, top, width: wide, height } = field.getBoundingClientRect();
        return document.elementFromPoint(left + wide / 2, top + height / 2) === field;
      });
    await expect.poll(() => onTop("A text or a figure")).toBe(true);
    await page.getByRole("button", { name: "Close" }).last().click();
    await menu(page);
    await page.getByRole("menuitem", { name: "Filter" }).press("Enter");
    const box = async (name: string) => {
      const place = await page.locator(name).last().boundingBox();
      return place ? [place.y, place.y + place.height] : [0, 0];
    };
    // all of its panel is on the page, and the button that does it in the panel
    const [, bottom = 0] = await box(".tools-panel");
    const [top = 0, end = 0] = await box('.tools-panel button:text-is("Filter")');
    expect(top).toBeGreaterThan(0);
    expect(end).toBeLessThanOrEqual(bottom);
    await page.context().close();
  });
});
