/** Rows, columns and sheets inserted, deleted, renamed and moved by hand, taken back, kept and saved. */
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { hasBrowser, type Served, serve } from "./browser";
import { gridIsReady, openSheet, goTo } from "./workbench-page";

const news = (page: Page, words: string | RegExp) =>
  page.locator("#news-words").getByText(words).first().waitFor({ timeout: 10_000 });

const shot = (page: Page, name: string) => page.screenshot({ path: `/tmp/w-acts/${name}.png` });

async function rename(page: Page, from: string, to: string) {
  await page.locator("[data-u-comp=slide-tab-item]").getByText(from, { exact: true }).dblclick();
  await page.keyboard.press("Control+a");
  await page.keyboard.type(to);
  await page.keyboard.press("Enter");
}

describe.runIf(hasBrowser)("acts", () => {
  let served: Served;
  beforeAll(async () => {
    served = await serve();
  });
  afterAll(() => served.close());

  it("scratch", async () => {
    const { page, complaints } = await served.open();
    page.on("console", (m) => console.log(m.text()));
    await page.goto(served.address);
    await page.waitForSelector("#save:enabled", { timeout: 10_000 });
    await gridIsReady(page);
    await openSheet(page, "Titrations");
    await goTo(page, "D6");
    await shot(page, "0");
    const began = Date.now();
    await rename(page, "Titrations", "My titrations");
    await news(page, "now called");
    console.log("took", Date.now() - began);
    await shot(page, "1");
    console.log(await page.locator("#news-words").innerText(), await page.locator("#standing").innerText());
    console.log(await page.locator("#pane h2").first().innerText());
    console.log(await page.evaluate(() => document.activeElement?.outerHTML.slice(0, 200)));
    await page.keyboard.press("Control+z");
    await page.waitForTimeout(3000);
    console.log(await page.locator("#news-words").innerText());
    if (!(await page.locator("#news-words").innerText()).includes("Taken")) await page.click("#undo");
    await page.waitForTimeout(3000);
    console.log(await page.locator("#news-words").innerText());
    await news(page, "Taken back");
    await shot(page, "2");
    console.log(await page.locator("#pane h2").first().innerText());
    await page.keyboard.press("Control+y");
    await news(page, "Done again");
    await shot(page, "3");
    console.log(complaints);
    expect(complaints).toEqual([]);
  });
});
