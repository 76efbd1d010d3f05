/** Charts of a file over their cells, and what else makes a reopened file look as it did. */
import type { Locator, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { partsOf } from "../xlsx/files";
import { chartBook } from "../xlsx/charts/chart-files";
import { quayCharts, quayRows } from "../xlsx/charts/quay";
import { hasBrowser, type OpenPage, type Served, serve } from "./browser";
import { goTo, gridIsReady, openSheet, saveByKeyboard, typeInto } from "./workbench-page";

const quay = chartBook(quayRows, quayCharts);

async function open(page: Page, name: string, bytes: Uint8Array): Promise<void> {
  const file = { name, mimeType: "application/octet-stream", buffer: Buffer.from(bytes) };
  await page.locator("#chooser").setInputFiles(file);
  await page.locator("#news-words").getByText(`${name} is open.`).waitFor({ timeout: 60_000 });
  await page.click("#news-close");
}

const chart = (page: Page, words: RegExp): Locator => page.getByRole("img", { name: words });

const boxOf = async (found: Locator) => {
  const box = await found.boundingBox();
  if (!box) throw new Error("It is not on the page.");
  return box;
};

const address = (page: Page): Promise<string> => page.locator("#grid input").first().inputValue();

describe.runIf(hasBrowser)("charts of a file on the page", () => {
  let served: Served;
  let opened: OpenPage;
  beforeAll(async () => {
    served = await serve();
    opened = await served.open();
    await opened.page.goto(served.address);
    await opened.page.waitForSelector("#save:enabled", { timeout: 60_000 });
    await gridIsReady(opened.page);
  });
  afterAll(() => served.close());

  it("are drawn where they lie, told in words, follow an edit, and stay in the file as they were", async () => {
    const { page, complaints } = opened;
    await open(page, "quay.xlsx", quay);
    const columns = chart(page, /^Column chart: Oil by kitchen/);
    await columns.waitFor();
    expect(await columns.locator("text").allTextContents()).toEqual(
      expect.arrayContaining(["Oil by kitchen", "Slipway", "Acid value"]),
    );
    await page.getByRole("img", { name: /^A pie chart called Slices is in the file/ }).waitFor({
      state: "attached",
    });
    await typeInto(page, "B2", "950");
    await chart(page, /^Column chart.*Litres, 4 points, 60\.0 to 950\.0/).waitFor();
    await page.keyboard.press("Control+z");
    await chart(page, /^Column chart.*Litres, 4 points, 60\.0 to 200\.0/).waitFor();
    await typeInto(page, "B2", "95");
    await chart(page, /^Column chart.*Litres, 4 points, 60\.0 to 200\.0/).waitFor();
    const { bytes } = await saveByKeyboard(page);
    const saved = partsOf(bytes);
    const before = partsOf(quay);
    const changed = Object.keys(saved).filter((name) => saved[name] !== before[name]);
    expect(changed).toEqual(["xl/worksheets/sheet1.xml"]);
    expect(complaints).toEqual([]);
  });

  it("move with the sheet, take the pointer on them and none beside them, and are left with Escape", async () => {
    const { page, complaints } = opened;
    await goTo(page, "A1");
    const columns = chart(page, /^Column chart/);
    const box = await boxOf(columns);
    await page.mouse.click(box.x + 60, box.y + 60);
    await expect.poll(() => columns.evaluate((each) => each === document.activeElement)).toBe(true);
    await page.keyboard.type("7");
    expect(await address(page)).toBe("A1");
    await page.keyboard.press("Escape");
    await expect
      .poll(() => columns.evaluate((each) => each === document.activeElement))
      .toBe(false);
    await page.keyboard.press("ArrowDown");
    await expect.poll(() => address(page)).toBe("A2");
    // just left of the chart stands a cell, which takes the press
    await page.mouse.click(box.x - 20, box.y + 50);
    await expect.poll(() => address(page)).toBe("E3");
    await page.mouse.move(box.x + 60, box.y + 60);
    await page.mouse.wheel(0, 100);
    await expect.poll(async () => (await boxOf(columns)).y).toBeLessThan(box.y - 40);
    await page.mouse.wheel(0, -500);
    await expect.poll(async () => (await boxOf(columns)).y).toBe(box.y);
    await page.getByRole("button", { name: "Smaller" }).click();
    await expect.poll(async () => (await boxOf(columns)).width).toBeLessThan(0.95 * box.width);
    await page.getByRole("button", { name: "Larger", exact: true }).click();
    await expect.poll(async () => (await boxOf(columns)).width).toBe(box.width);
    expect(complaints).toEqual([]);
  });

  it("come into view when the keyboard comes to them", async () => {
    const { page } = opened;
    const slices = page.getByRole("img", { name: /^A pie chart/ });
    await chart(page, /^Bar chart/).focus();
    await page.keyboard.press("Tab");
    await expect.poll(() => slices.evaluate((each) => each === document.activeElement)).toBe(true);
    await expect
      .poll(async () => (await slices.boundingBox())?.y ?? 9999, { timeout: 10_000 })
      .toBeLessThan(780);
  });

  it("are printed with their sheet, at one choice: as wide as the page, its headings on each", async () => {
    const { page, complaints } = opened;
    await page.evaluate(() => {
      window.print = () => undefined;
    });
    await page.locator("#tools").click();
    await page.getByRole("menuitem", { name: "Print this sheet" }).click();
    await page.locator(".printed table[aria-label=Data]").waitFor({ state: "attached" });
    await page.emulateMedia({ media: "print" });
    expect(await page.locator(".printed td").first().isVisible()).toBe(true);
    expect(await page.locator(".printed figure svg.chart").count()).toBe(4);
    expect(await page.locator("#pane").isVisible()).toBe(false);
    const width = await page
      .locator(".printed table")
      .last()
      .evaluate((table) => table.getBoundingClientRect().width);
    // 277 mm between the margins of A4 lying
    expect(width).toBeLessThanOrEqual(1047);
    // A4 upright, in points: the sheet is narrow
    const paper = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
    const sides = [...paper.matchAll(/\/MediaBox \[0 0 (\d+)[\d.]* (\d+)/g)];
    expect(sides.length).toBe([...paper.matchAll(/\/Type\s*\/Page\b(?!s)/g)].length);
    expect(new Set(sides.map(([, across, down]) => `${across} x ${down}`))).toEqual(
      new Set(["594 x 841"]),
    );
    // four charts under the cells
    expect(sides.length).toBe(2);
    await page.emulateMedia({ media: "screen" });
    await page.evaluate(() => window.dispatchEvent(new Event("afterprint")));
    expect(await page.locator(".printed").count()).toBe(0);
    expect(complaints).toEqual([]);
  });

  it("stay beside frozen rows and columns; dates are counted below, and not added up", async () => {
    const { page, complaints } = opened;
    const logbook = await (await fetch(`${served.address}logbook.xlsx`)).arrayBuffer();
    await open(page, "logbook.xlsx", new Uint8Array(logbook));
    await openSheet(page, "Lots");
    const lots = chart(page, /^Scatter chart: Free fatty acid of the lots/);
    await lots.waitFor();
    const before = await boxOf(lots);
    await page.mouse.move(700, 250);
    await page.mouse.wheel(0, 200);
    await expect.poll(async () => (await boxOf(lots)).y).toBeLessThan(before.y);
    // the headings stand over it: rows 1 to 3 are not covered
    const covers = await page.evaluate(() => {
      const canvas = document.querySelector(".chart-layer")?.getBoundingClientRect();
      const found = document.elementFromPoint((canvas?.left ?? 0) + 300, (canvas?.top ?? 0) + 60);
      return found?.closest(".chart-frame") !== null;
    });
    expect(covers).toBe(false);
    await openSheet(page, "Titrations");
    await goTo(page, "F4");
    const below = page.locator("#grid footer");
    const nameBox = page.locator("#grid input").first();
    const choose = async (area: string) => {
      await nameBox.fill(area);
      await nameBox.press("Enter");
    };
    await choose("F4:F6");
    await below.getByText(/Sum/).first().waitFor();
    await choose("A4:A6");
    await below.getByText(/Count/).first().waitFor();
    await expect.poll(() => below.getByText(/Sum/).count()).toBe(0);
    expect(complaints).toEqual([]);
  });
});
