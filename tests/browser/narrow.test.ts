/** The page on a telephone: the pane may have the height to itself, and the sheet comes back by itself. */
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { hasBrowser, type Served, serve } from "./browser";
import { goTo, gridIsReady } from "./workbench-page";

const telephone = { viewport: { width: 320, height: 700 }, hasTouch: true };

const heightOf = (page: Page, id: string): Promise<number> =>
  page.locator(id).evaluate((part) => part.getBoundingClientRect().height);

const complete = async (page: Page): Promise<void> => {
  await page.waitForSelector("#save:enabled", { timeout: 60_000 });
  await gridIsReady(page);
};

describe.runIf(hasBrowser)("the page on a telephone", () => {
  let served: Served;
  beforeAll(async () => {
    served = await serve();
  });
  afterAll(() => served.close());

  it("gives the pane all of the height at a press, and shares it again at the next", async () => {
    const { page, complaints } = await served.open(telephone);
    await page.goto(served.address);
    await complete(page);
    const shared = await heightOf(page, "#pane");
    const button = page.getByRole("button", { name: "Pane alone" });
    await button.tap();
    expect(await button.getAttribute("aria-pressed")).toBe("true");
    expect(await heightOf(page, "#sheet")).toBe(0);
    expect(await heightOf(page, "#pane")).toBeGreaterThan(1.8 * shared);
    await button.tap();
    expect(await heightOf(page, "#pane")).toBe(shared);
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  it("shows the sheet again when F6 goes to it, and the grid still takes what is typed", async () => {
    const { page, complaints } = await served.open(telephone);
    await page.goto(served.address);
    await complete(page);
    await page.getByRole("button", { name: "Pane alone" }).tap();
    await page.focus("#pane");
    await page.keyboard.press("F6");
    await expect.poll(() => heightOf(page, "#sheet")).toBeGreaterThan(200);
    await goTo(page, "A1");
    expect(
      await page.getByRole("button", { name: "Pane alone" }).getAttribute("aria-pressed"),
    ).toBe("false");
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  it("has no such button on a wide page, where both are seen", async () => {
    const { page } = await served.open();
    await page.goto(served.address);
    await complete(page);
    expect(await page.locator("#larger").isVisible()).toBe(false);
    await page.context().close();
  });
});
