/** The page on a telephone: the pane may have the height to itself, and the sheet comes back by itself. */
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { rarely } from "../wide";
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

  rarely(
    "gives the pane all of the height at a press, and shares it again at the next",
    async () => {
      const { page, complaints } = await served.open(telephone);
      await page.goto(served.address);
      await complete(page);
      const shared = await heightOf(page, "#pane");
      await page.getByRole("button", { name: "Hide sheet" }).tap();
      expect(await heightOf(page, "#sheet")).toBe(0);
      expect(await heightOf(page, "#pane")).toBeGreaterThan(1.8 * shared);
      await page.getByRole("button", { name: "Show sheet" }).tap();
      expect(await heightOf(page, "#pane")).toBe(shared);
      expect(complaints).toEqual([]);
      await page.context().close();
    },
  );

  rarely(
    "shows the sheet again when F6 goes to it, and the grid still takes what is typed",
    async () => {
      const { page, complaints } = await served.open(telephone);
      await page.goto(served.address);
      await complete(page);
      await page.getByRole("button", { name: "Hide sheet" }).tap();
      await page.focus("#pane");
      await page.keyboard.press("F6");
      await expect.poll(() => heightOf(page, "#sheet")).toBeGreaterThan(200);
      await goTo(page, "A1");
      await page.getByRole("button", { name: "Hide sheet" }).waitFor();
      expect(complaints).toEqual([]);
      await page.context().close();
    },
  );

  it("gives the sheet all of the height at a press, until the pane is gone to", async () => {
    const { page, complaints } = await served.open(telephone);
    await page.goto(served.address);
    await complete(page);
    const shared = await heightOf(page, "#sheet");
    await page.getByRole("button", { name: "Hide pane" }).tap();
    await page.getByRole("button", { name: "Show pane" }).waitFor();
    expect(await heightOf(page, "#pane")).toBe(0);
    expect(await heightOf(page, "#sheet")).toBeGreaterThan(1.8 * shared);
    await goTo(page, "A1");
    await page.keyboard.press("F6");
    await expect.poll(() => heightOf(page, "#pane")).toBeGreaterThan(200);
    await page.getByRole("button", { name: "Hide pane" }).waitFor();
    // turned, and turned back: the zoom took the room of the names
    await page.setViewportSize({ width: 900, height: 700 });
    await page.setViewportSize({ width: 320, height: 640 });
    const names = page.locator("[data-u-comp=slide-tab-item]").first().locator("xpath=..");
    await expect.poll(async () => (await names.boundingBox())?.width).toBeGreaterThan(100);
    expect(complaints).toEqual([]);
  });

  rarely(
    "has a head of 96 pixels at the most at any width, for a finger and a mouse, with a long name and grey cells",
    async () => {
      for (const hasTouch of [true, false]) {
        const { page } = await served.open({ viewport: { width: 1400, height: 700 }, hasTouch });
        await page.goto(served.address);
        await complete(page);
        await page.evaluate(() => {
          const put = (id: string, words: string) => {
            const part = document.getElementById(id);
            if (part) part.textContent = words;
            part?.removeAttribute("hidden");
          };
          put("file-name", `${"oil of the three quays ".repeat(4)}2026.xlsx`);
          put("standing", "kept in this browser only");
          put("grey", "1,234 grey cells: why?");
          // laid out anew at each width, it takes nearly all of the time
          document.getElementById("grid")?.setAttribute("style", "display: none");
        });
        const tall: string[] = [];
        for (let width = 320; width <= 1400; width += 20) {
          await page.setViewportSize({ width, height: 700 });
          const height = await heightOf(page, ".page-bar");
          const room = await page.evaluate(() => document.documentElement.scrollWidth);
          if (height > 96 || room > width)
            tall.push(`${String(width)}: ${String(height)} ${String(room)}`);
        }
        expect(tall).toEqual([]);
      }
    },
  );

  it("shows every button of the bar whole, Help among them, with the sheet as text and without", async () => {
    for (const hasTouch of [true, false]) {
      const { page } = await served.open({ ...telephone, hasTouch });
      await page.goto(served.address);
      await complete(page);
      const shown = () =>
        page
          .locator(".page-bar :is(button, a)")
          .filter({ visible: true })
          .evaluateAll((all) =>
            all.map((each) => {
              const { left, right } = each.getBoundingClientRect();
              const isWhole = left >= 0 && right <= innerWidth;
              return `${String(each.textContent).trim()}${isWhole ? "" : `, cut at ${String(right)}`}`;
            }),
          );
      const first = ["Hide pane", "Hide sheet", "Help", "New", "Open", "Save", "Undo", "Redo"];
      expect(await shown()).toEqual([...first, "Sheet"]);
      await page.getByRole("button", { name: "Sheet", exact: true }).click();
      await page.getByRole("menuitem", { name: "Text view" }).click();
      await expect.poll(shown).toEqual([...first, "Text view"]);
      await page.getByRole("button", { name: "Text view" }).click();
      await expect.poll(shown).toEqual([...first, "Sheet"]);
      await page.context().close();
    }
  });

  it("scrolls the cells under a finger that is drawn over them, and selects under one that taps", async () => {
    const { page, complaints } = await served.open(telephone);
    await page.goto(served.address);
    await complete(page);
    await goTo(page, "A1");
    const touches = await page.context().newCDPSession(page);
    const touch = (type: "touchStart" | "touchMove" | "touchEnd", x: number, y: number) =>
      touches.send("Input.dispatchTouchEvent", {
        type,
        touchPoints: type === "touchEnd" ? [] : [{ x, y }],
      });
    const { x, y } = await page
      .locator("#grid canvas[id^=univer-sheet-main]")
      .first()
      .evaluate((canvas) => {
        const { left, top, width, height } = canvas.getBoundingClientRect();
        return { x: left + width / 2, y: top + height * 0.7 };
      });
    await touch("touchStart", x, y);
    for (let drawn = 10; drawn <= 400; drawn += 10)
      await touch("touchMove", x - drawn / 4, y - drawn);
    await touch("touchEnd", 0, 0);
    const name = page.locator("#grid input").first();
    expect(await name.inputValue()).toBe("A1");
    await page.touchscreen.tap(x, y);
    const row = async () => Number(/\d+/.exec(await name.inputValue())?.[0] ?? 0);
    await expect.poll(row).toBeGreaterThan(12);
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  rarely("has no such button on a wide page, where both are seen", async () => {
    const { page } = await served.open();
    await page.goto(served.address);
    await complete(page);
    expect(await page.locator("#larger").isVisible()).toBe(false);
    await page.context().close();
  });
});
