/** What is typed into a task belongs to the workbook that is open: another one is not offered it. */
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { root } from "../rules/sources-of";
import { violations } from "../taskpane/page/checks";
import { hasBrowser, type Served, serve } from "./browser";
import { gridIsReady } from "./workbench-page";

const tidy = join(root, "tests/second-opinion/xlsx/tidy.xlsx");

const ready = async (page: Page): Promise<void> => {
  await gridIsReady(page);
  await page.waitForSelector("#save:enabled", { timeout: 60_000 });
};

const task = (page: Page, name: string) =>
  page.locator("#pane nav").getByRole("button", { name, exact: true }).click();

/** The tasks whose buttons say so. */
const underWay = (page: Page): Promise<string[]> =>
  page.locator("#pane nav button[aria-describedby]").allInnerTexts();

const lot = (page: Page) => page.getByLabel("Lot", { exact: true });
const sizes = (page: Page) => page.getByRole("textbox", { name: "Batch sizes" });
const goOn = (page: Page) => page.getByRole("button", { name: /^Go on with/ });

/** The first steps of a titration and of a table; the last letters only just typed. */
async function begin(page: Page, mark: string, size: string): Promise<void> {
  await task(page, "What if");
  await sizes(page).fill(size);
  await task(page, "Titrate");
  await page.getByRole("button", { name: /Oil/ }).first().click();
  await lot(page).fill(mark);
}

async function opensTidy(page: Page): Promise<void> {
  await page.locator("#chooser").setInputFiles(tidy);
  await page.locator("#file-name").getByText("tidy.xlsx").waitFor({ timeout: 60_000 });
  await page.locator("#news-words").getByText("is open.").waitFor();
}

async function isOffered(page: Page, mark: string, size: string): Promise<void> {
  await task(page, "Titrate");
  await goOn(page).first().waitFor();
  expect(await goOn(page).count()).toBe(1);
  await page.getByRole("button", { name: `Go on with ${mark}` }).waitFor();
  await task(page, "What if");
  await sizes(page).waitFor();
  expect(await sizes(page).inputValue()).toBe(size);
}

describe.runIf(hasBrowser)("what was typed into a task", () => {
  let served: Served;
  beforeAll(async () => {
    served = await serve();
  });
  afterAll(() => served.close());

  it("in the example is not offered in a file, nor the other way round, and is there on coming back", async () => {
    const { page, complaints } = await served.open();
    await page.goto(served.address);
    await ready(page);
    await begin(page, "EXAMPLE-1", "70");
    await opensTidy(page);
    // the task that was open is there anew, with nothing in it
    await page.getByRole("button", { name: /Oil/ }).first().click();
    expect(await lot(page).inputValue()).toBe("");
    expect(await goOn(page).count()).toBe(0);
    await task(page, "What if");
    await sizes(page).waitFor();
    expect(await sizes(page).inputValue()).not.toBe("70");
    await begin(page, "OWN-1", "35");
    expect(await violations(page, ["#grid"])).toEqual([]);
    // the same file again
    await opensTidy(page);
    await isOffered(page, "OWN-1", "35");
    await page.reload();
    await ready(page);
    // said before anything is opened
    await expect.poll(() => underWay(page)).toEqual(["Titrate"]);
    expect(await violations(page, ["#grid"])).toEqual([]);
    await isOffered(page, "OWN-1", "35");
    await page.getByRole("button", { name: "Begin with the example again" }).press("Enter");
    await page.waitForEvent("load");
    await ready(page);
    await isOffered(page, "EXAMPLE-1", "70");
    expect(complaints).toEqual([]);
  });

  it("is said to be under way on its button, and on no other, until it is recorded or discarded", async () => {
    const { page, complaints } = await served.open();
    await page.goto(served.address);
    await ready(page);
    // opened, and nothing done in it
    for (const name of ["Fuel", "Batch", "Titrate", "This cell"]) await task(page, name);
    expect(await underWay(page)).toEqual([]);
    await begin(page, "LATE-1", "70");
    await task(page, "This cell");
    await expect.poll(() => underWay(page)).toEqual(["Titrate"]);
    await page.reload();
    await ready(page);
    await expect.poll(() => underWay(page)).toEqual(["Titrate"]);
    await task(page, "Titrate");
    await page.getByRole("button", { name: "Discard LATE-1" }).click();
    await page.getByRole("button", { name: "Discard LATE-1 for good" }).click();
    await task(page, "This cell");
    await expect.poll(() => underWay(page)).toEqual([]);
    expect(complaints).toEqual([]);
  });

  it("was handed from one task to another beside its own workbook, and not again beside the next", async () => {
    const { page, complaints } = await served.open();
    await page.goto(served.address);
    await ready(page);
    await task(page, "Card");
    await page.getByRole("button", { name: "Test its fuel" }).click();
    const title = page.locator("#pane .task-of").locator("visible=true");
    await title.getByText(/B-/).waitFor();
    await opensTidy(page);
    await title.getByText("Fuel", { exact: true }).waitFor();
    // the card looks for batches too, and says when it has
    await task(page, "Card");
    await page.getByText(/No batch is recorded yet/).waitFor();
    await task(page, "Fuel");
    expect(await title.innerText()).toBe("Fuel");
    expect(complaints).toEqual([]);
  });

  it("in a logbook begun here stays with it, and goes when that is forgotten", async () => {
    const { page, complaints } = await served.open();
    await page.goto(served.address);
    await ready(page);
    const begins = async () => {
      const said = page.getByText(/^Your own logbook is open, empty/);
      // said of the one before
      if (await said.isVisible()) await page.locator("#news-close").press("Enter");
      await page.locator("#begin").press("Enter");
      await said.waitFor({ timeout: 60_000 });
    };
    await begins();
    await begin(page, "FIRST-1", "70");
    await begins();
    await task(page, "Titrate");
    await page.getByRole("button", { name: /Oil/ }).first().click();
    expect(await lot(page).inputValue()).toBe("");
    await begin(page, "SECOND-1", "35");
    await page.keyboard.press("Control+o");
    await page.getByRole("button", { name: /^Open my-logbook\.xlsx/ }).press("Enter");
    await page.locator("#news-words").getByText("is open again").waitFor({ timeout: 60_000 });
    await isOffered(page, "FIRST-1", "70");
    const keys = () =>
      page.evaluate(
        () =>
          new Promise<string>((done, failed) => {
            const asked = indexedDB.open("titrebook");
            asked.onerror = () => failed(asked.error);
            asked.onsuccess = () => {
              const all = asked.result.transaction("drafts").objectStore("drafts").getAll();
              all.onsuccess = () => {
                asked.result.close();
                done(JSON.stringify(all.result));
              };
            };
          }),
      );
    expect(await keys()).toContain("SECOND-1");
    await page.keyboard.press("Control+o");
    await page.getByRole("button", { name: "Forget my-logbook.xlsx" }).press("Enter");
    await page
      .getByRole("button", { name: "my-logbook.xlsx is in no file: forget it?" })
      .press("Enter");
    await expect.poll(keys).not.toContain("SECOND-1");
    expect(await keys()).toContain("FIRST-1");
    expect(complaints).toEqual([]);
  });
});
