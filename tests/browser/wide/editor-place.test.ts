import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { hasBrowser, type OpenPage, type Served, serve } from "../browser";
import { goTo, gridIsReady, paneSays } from "../workbench-page";

const press = async (page: Page, key: string, times: number) => {
  for (let pressed = 0; pressed < times; pressed += 1)
    await page.keyboard.press(key, { delay: 60 });
};

/** Begins to type, and says how far from the left of the page the editor then stands, in pixels. */
async function editorLeft(page: Page): Promise<number> {
  await page.keyboard.type("1");
  await page.waitForTimeout(500);
  const box = await page.locator('[id*="EDITOR__DOCS_NORMAL"]').first().boundingBox();
  await page.keyboard.press("Escape");
  return box?.x ?? Number.NaN;
}

/** The height at which row 6 stands, and a place in column B, whatever is scrolled beside it. */
const rowSix = 335;
const columnB = 170;

describe.runIf(hasBrowser)("the editor in a cell", () => {
  let served: Served;
  let opened: OpenPage;

  beforeAll(async () => {
    served = await serve();
  });
  afterAll(() => served.close());
  beforeEach(async () => {
    // Narrow, so that the sheet is scrolled sideways beside columns A and B, which stay in view.
    opened = await served.open({ viewport: { width: 900, height: 800 } });
    await opened.page.goto(served.address);
    await gridIsReady(opened.page);
  });
  afterEach(async () => {
    await opened.page.context().close();
    expect(opened.complaints).toEqual([]);
  });

  /** A click where the editor stood, from another cell, comes back to the cell it was to edit. */
  async function expectEditorIn(page: Page, address: string): Promise<void> {
    await paneSays(page, `Batches ${address}`);
    const left = await editorLeft(page);
    await press(page, "ArrowDown", 2);
    await page.mouse.click(left + 2, rowSix);
    await paneSays(page, `Batches ${address}`);
  }

  it("stands in a column that stays in view, when that cell is reached by its address", async () => {
    await goTo(opened.page, "P6");
    await goTo(opened.page, "B6");
    await expectEditorIn(opened.page, "B6");
  });

  it("stands in a scrolled column, when that cell is reached by keyboard from one in view", async () => {
    const { page } = opened;
    await goTo(page, "P6");
    await page.mouse.click(columnB, rowSix);
    await paneSays(page, "Batches B6");
    await press(page, "ArrowRight", 9);
    await expectEditorIn(page, "K6");
  });
});
