/**
 * What is done by hand in a file of 10,000 rows and 20 columns, in the built workbench: a row put in above
 * all of them and taken back, the rows sorted, filtered, and the page loaded anew with what it kept. From
 * the key that is pressed to the words that say it is done, by the clock; and each against the opening of
 * the same file in the same page.
 */
import type { Browser, Page } from "playwright-core";
import { gridIsThere, withBuiltPage } from "./built-page";
import { type Figure, type Measure, told } from "./figure";
import { fileOf } from "./large-file";
import { line, rows, title } from "./large-rows";

const patience = { timeout: 180_000 };

const says = (page: Page, words: string) =>
  page.waitForFunction(
    (part) => document.querySelector("#news-words")?.textContent.includes(part) === true,
    words,
    patience,
  );

async function seconds(act: () => Promise<unknown>): Promise<number> {
  const start = Date.now();
  await act();
  return (Date.now() - start) / 1000;
}

async function choose(page: Page, words: string): Promise<void> {
  await page.focus("#tools");
  await page.keyboard.press("Enter");
  await page.getByRole("menuitem", { name: words }).click(patience);
}

async function goTo(page: Page, cell: string): Promise<void> {
  const nameBox = page.locator("#grid input").first();
  await nameBox.fill(cell);
  await nameBox.press("Enter");
  await page.locator("#pane h2").getByText(cell).waitFor(patience);
}

async function acts(browser: Browser, address: string): Promise<[string, number][]> {
  const file = fileOf([title(1), ...Array.from({ length: rows }, (_, at) => line(at + 2))]);
  const buffer = Buffer.from(file);
  const page = await (await browser.newContext()).newPage();
  page.on("dialog", (dialog) => void dialog.accept());
  await page.goto(address);
  await gridIsThere(page);
  const [chooser] = await Promise.all([page.waitForEvent("filechooser"), page.click("#open")]);
  const opened = await seconds(async () => {
    await chooser.setFiles({ name: "large.xlsx", mimeType: "application/octet-stream", buffer });
    await says(page, "large.xlsx is open");
  });
  const timed: [string, number][] = [["opened", opened]];
  const time = async (what: string, act: () => Promise<unknown>) => {
    timed.push([what, await seconds(act)]);
  };
  await goTo(page, "C3");
  await time("sorted", async () => {
    await choose(page, "Largest first");
    await says(page, "Sorted by");
  });
  await time("filtered: the window", async () => {
    await choose(page, "Filter");
    await page.locator(".tools-panel").getByRole("button", { name: "Filter" }).waitFor(patience);
  });
  await page.getByLabel("At least").fill("5");
  await time("filtered", async () => {
    await page.locator(".tools-panel").getByRole("button", { name: "Filter" }).click(patience);
    await says(page, " show. ");
  });
  await time("all rows shown", async () => {
    await choose(page, "Show all rows");
    await says(page, "All ");
  });
  await goTo(page, "A2");
  await time("a row put in above all", async () => {
    await choose(page, "Insert rows above");
    await says(page, "1 row inserted");
  });
  await time("loaded anew with what it kept", async () => {
    await page.reload();
    await gridIsThere(page);
    await page.getByText("large.xlsx").first().waitFor(patience);
  });
  await page.context().close();
  return timed;
}

async function run(build: string): Promise<Figure[]> {
  const timed = await withBuiltPage(build, acts);
  if (!timed) return [];
  const [, opening = NaN] = timed[0] ?? [];
  return timed
    .slice(1)
    .flatMap(([what, time]) => [
      told(`10,000 x 20 cells in the page, ${what}`, time, "s", 1),
      told(`10,000 x 20 cells in the page, ${what}`, time / opening, "x opening it"),
    ]);
}

export const largeActs: Measure = { name: "large acts in the page", isOfBuild: true, run };
