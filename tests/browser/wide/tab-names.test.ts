/** A sheet's tab in the built page: a name that is refused does not stay on it. */
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { hasBrowser, type Served, serve } from "../browser";
import { gridIsReady, openSheet } from "../workbench-page";

const tabs = (page: Page) =>
  page.locator('#grid [data-u-comp="slide-tab-item"] span').allTextContents();

const tab = (page: Page, name: string) =>
  page.locator('#grid [data-u-comp="slide-tab-item"]').getByText(name, { exact: true });

async function rename(page: Page, name: string, to: string): Promise<void> {
  await tab(page, name).click();
  await page.locator("#pane h2").getByText(name).waitFor();
  // the tabs are drawn anew while a sheet is shown: a double press in between is none
  await expect
    .poll(async () => {
      await tab(page, name).dblclick();
      return page.locator("#grid [data-u-comp=slide-tab-item] [contenteditable=true]").count();
    })
    .toBe(1);
  await page.keyboard.press("Control+a");
  await page.keyboard.type(to, { delay: 20 });
  await page.keyboard.press("Enter");
}

describe.runIf(hasBrowser)("the sheets' tabs", () => {
  let served: Served;
  beforeAll(async () => {
    served = await serve();
  });
  afterAll(async () => {
    await served.close();
  });

  it("has its own name again when the name typed into it was refused", async () => {
    const { page } = await served.open();
    await page.goto(served.address);
    await gridIsReady(page);
    const before = await tabs(page);
    expect(before).toContain("Lots");
    // a name that spreadsheet programs keep for themselves
    await rename(page, "Lots", "History");
    await page.locator("#news-words").getByText("cannot be that of a sheet").waitFor();
    await tab(page, "Lots").waitFor();
    expect(await tabs(page)).toEqual(before);
    // and the tabs still lead to their sheets
    await openSheet(page, "Titrations");
    await page.context().close();
  });

  it("keeps the name typed into it where the sheet takes it", async () => {
    const { page } = await served.open();
    await page.goto(served.address);
    await gridIsReady(page);
    const before = await tabs(page);
    await page.getByRole("button", { name: "New sheet" }).click();
    await expect.poll(async () => (await tabs(page)).length).toBe(before.length + 1);
    const added = (await tabs(page)).find((name) => !before.includes(name)) ?? "";
    await rename(page, added, "My own");
    await tab(page, "My own").waitFor();
    expect(await tabs(page)).toEqual([...before, "My own"]);
    await page.context().close();
  });
});
