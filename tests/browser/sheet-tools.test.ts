/** What can be done with the sheet itself: sorted, chosen from lists, found, filtered, dressed. */
import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { isFileProblem, newXlsx, openXlsx, patchXlsx, sayFile, type Edit } from "../../src/xlsx";
import { violations } from "../taskpane/page/checks";
import { hasBrowser, type OpenPage, type Served, serve } from "./browser";
import { chooserOf, goTo, openSheet, saveByKeyboard } from "./workbench-page";

/** Titrations of a day at the quay, with lists to choose from: written out, and in cells elsewhere. */
function quayLog(): Buffer {
  const rows = [
    ["Lot", "Oil", "Titre", "Twice", "Jar"],
    ["NQ-3", "fryer", 2.5, "=C2*2", "A"],
    ["SW-1", "lard", 4.25, "=C3*2", "B"],
    ["TW-2", "fryer", 0.75, "=C4*2", "C"],
  ];
  const sheet = { name: "Log", rows: [], columnWidths: [], tables: [], frozenRows: 0 };
  const made = newXlsx({ name: "quay", sheets: [sheet, { ...sheet, name: "Words" }] });
  if (isFileProblem(made)) throw new Error(sayFile(made));
  const cell = (on: string, row: number, column: number, typed: string | number): Edit => ({
    do: "set-cell",
    sheet: on,
    row,
    column,
    content:
      typeof typed === "string" && typed.startsWith("=")
        ? { kind: "formula", formula: typed, result: undefined }
        : { kind: "value", value: typed },
  });
  const area = { row: 0, column: 0, rows: 4, columns: 5 };
  const oils = { row: 1, column: 1, rows: 3, columns: 1 };
  const file = patchXlsx(made, [
    ...rows.flatMap((cells, row) => cells.map((typed, column) => cell("Log", row, column, typed))),
    { do: "add-table", sheet: "Log", name: "Log", area },
    { do: "offer-words", sheet: "Log", area: oils, words: ["fryer", "lard", "tallow"] },
    cell("Words", 0, 0, "elsewhere"),
  ]);
  if (isFileProblem(file)) throw new Error(sayFile(file));
  return Buffer.from(file);
}

const news = (page: Page) => page.locator("#news-words");

async function open(page: Page, buffer: Buffer, name = "quay.xlsx"): Promise<void> {
  const chooser = await chooserOf(page);
  await chooser.setFiles({ name, mimeType: "application/octet-stream", buffer });
  await news(page).getByText("is open.").waitFor({ timeout: 60_000 });
}

async function saved(page: Page) {
  const { bytes } = await saveByKeyboard(page);
  const workbook = openXlsx(bytes);
  if (isFileProblem(workbook)) throw new Error(sayFile(workbook));
  const sheet = workbook.sheets[0];
  const at = (row: number, column: number) =>
    sheet?.cells.find((each) => each.row === row && each.column === column);
  return { workbook, sheet, at };
}

/** Something of the menu of the button Sheet, by keyboard. */
async function tool(page: Page, words: string): Promise<void> {
  await page.focus("#tools");
  await page.keyboard.press("Enter");
  const item = page.getByRole("menuitem", { name: words });
  await item.waitFor();
  await item.focus();
  await page.keyboard.press("Enter");
}

describe.runIf(hasBrowser)("the sheet's own tools", () => {
  let served: Served;
  let opened: OpenPage;
  beforeAll(async () => {
    served = await serve();
    opened = await served.open();
    opened.page.on("filechooser", () => undefined);
    await opened.page.goto(served.address);
    await opened.page.waitForSelector("#save:enabled", { timeout: 60_000 });
  });
  afterAll(() => served.close());
  afterEach(() => {
    expect(opened.complaints).toEqual([]);
  });

  it("sort a table by the selected column, say so without moving the grid, and undo", async () => {
    const { page } = opened;
    await open(page, quayLog());
    await goTo(page, "C3");
    const place = () => page.locator("#grid").boundingBox();
    const before = await place();
    await tool(page, "Smallest first");
    await news(page).getByText("Sorted by Titre, the smallest first: 3 rows.").waitFor();
    expect(await place()).toEqual(before);
    await page.keyboard.press("Control+z");
    await news(page).getByText("Sort undone.").waitFor();
    await page.keyboard.press("Control+y");
    await expect.poll(() => news(page).textContent()).toBe("");
    const { at } = await saved(page);
    expect([1, 2, 3].map((row) => at(row, 0)?.value)).toEqual(["TW-2", "NQ-3", "SW-1"]);
    // by hand: twice 0.75 in the first row
    expect(at(1, 3)).toMatchObject({ formula: "=C2*2", value: 1.5 });
    await page.keyboard.press("Control+z");
    await expect.poll(async () => (await saved(page)).at(1, 0)?.value).toBe("NQ-3");
  });

  it("offer the words of a list beside its cell, by keyboard and by a press", async () => {
    const { page } = opened;
    await goTo(page, "B3");
    await page.getByRole("button", { name: "Choose from a list" }).waitFor();
    await page.focus("#tools");
    await page.keyboard.press("F6");
    await page.keyboard.press("Alt+ArrowDown");
    const list = page.getByRole("listbox");
    await list.waitFor();
    expect(await list.getByRole("option").allTextContents()).toEqual(["fryer", "lard", "tallow"]);
    // it begins at what the cell holds
    await list.getByRole("option", { selected: true }).getByText("lard").waitFor();
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("Enter");
    await page.locator("#pane").getByText("tallow").first().waitFor();
    await page.getByRole("button", { name: "Choose from a list" }).click();
    await list.getByRole("option", { name: "fryer" }).click();
    await page.locator("#pane").getByText("fryer").first().waitFor();
    expect((await saved(page)).at(2, 1)?.value).toBe("fryer");
    await goTo(page, "C3");
    await page.getByRole("button", { name: "Choose from a list" }).waitFor({ state: "detached" });
  });

  it("find a text on this sheet and on all of them, forwards and back, without leaving the window", async () => {
    const { page } = opened;
    await goTo(page, "A1");
    await page.keyboard.press("Control+f");
    const panel = page.getByRole("region", { name: "Find" });
    await panel.getByRole("searchbox").fill("fryer");
    await page.keyboard.press("Enter");
    await panel.getByText("Log B2: 1 of 3 cells.").waitFor();
    await page.keyboard.press("Enter");
    await panel.getByText("Log B3: 2 of 3 cells.").waitFor();
    await page.keyboard.press("Shift+Enter");
    await panel.getByText("Log B2: 1 of 3 cells.").waitFor();
    await panel.getByRole("searchbox").fill("elsewhere");
    await page.keyboard.press("Enter");
    await panel.getByText("elsewhere is not on the sheet Log.").waitFor();
    await panel.getByRole("checkbox").check();
    await panel.getByRole("searchbox").press("Enter");
    await panel.getByText("Words A1: 1 of 1 cell.").waitFor();
    await page.locator("#pane h2").getByText("Words A1").waitFor();
    expect(await violations(page)).toEqual([]);
    await page.keyboard.press("Escape");
    await panel.waitFor({ state: "detached" });
    await openSheet(page, "Log");
  });

  it("dress cells, fill down and give a row its height, in the file too", async () => {
    const { page } = opened;
    await goTo(page, "C3");
    await tool(page, "1.000");
    await page.locator("#pane").getByText("4.250", { exact: true }).waitFor();
    await tool(page, "underlined");
    await tool(page, "all lines");
    await tool(page, "row height");
    await page.getByRole("spinbutton").fill("30");
    await page.keyboard.press("Enter");
    await page.getByRole("region", { name: "Row height" }).waitFor({ state: "detached" });
    await goTo(page, "C4");
    await tool(page, "Fill down");
    await expect.poll(async () => (await saved(page)).at(3, 2)?.value).toBe(4.25);
    await goTo(page, "G2");
    await page.keyboard.type("=C2*10", { delay: 20 });
    await page.keyboard.press("Enter");
    await page.keyboard.press("Control+d");
    await expect.poll(async () => (await saved(page)).at(2, 6)?.formula).toBe("=C3*10");
    const { at, workbook } = await saved(page);
    expect(workbook.looks[at(2, 2)?.look ?? 0]).toMatchObject({
      format: "0.000",
      underlined: true,
      borders: { top: { line: "thin" }, left: { line: "thin" } },
    });
    // by hand: 4.25 x 10
    expect(at(2, 6)?.value).toBe(42.5);
  });

  it("stand in a menu that axe finds nothing in; the grid's own menus offer nothing that is refused", async () => {
    const { page } = opened;
    await page.focus("#tools");
    await page.keyboard.press("Enter");
    await page.getByRole("menuitem", { name: "Find" }).waitFor();
    expect(await violations(page, ["#grid"])).toEqual([]);
    await page.keyboard.press("Escape");
    const grid = await page.locator("#grid").boundingBox();
    const refused = /Cut|Protect|Merge|Hide|Shift/;
    for (const [x, y] of [
      [170, 110],
      [20, 110],
      [170, 38],
    ] as const) {
      await page.mouse.click((grid?.x ?? 0) + x, (grid?.y ?? 0) + y, { button: "right" });
      const menu = page.locator(".univer-popup").filter({ hasText: "Copy" }).last();
      await menu.waitFor();
      expect(await menu.innerText()).not.toMatch(refused);
      await page.keyboard.press("Escape");
      await page.mouse.click((grid?.x ?? 0) + 500, (grid?.y ?? 0) + 400);
      await menu.waitFor({ state: "hidden" });
    }
  });
});
