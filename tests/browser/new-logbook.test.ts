/** A logbook of one's own on the page, from the button New to a row that is saved. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { isFileProblem, openXlsx, sayFile } from "../../src/xlsx";
import { hasBrowser, type OpenPage, type Served, serve } from "./browser";
import { at, goTo, openSheet, paneSays, saveByKeyboard, typeInto } from "./workbench-page";

describe.runIf(hasBrowser)("a logbook of one's own, on the page", () => {
  let served: Served;
  let opened: OpenPage;
  beforeAll(async () => {
    served = await serve();
    opened = await served.open();
  });
  afterAll(async () => {
    await served.close();
  });

  it("is begun by one press, shows no error in rows that are not begun, and saves what is typed", async () => {
    const { page, complaints } = opened;
    await page.goto(served.address);
    await page.getByRole("button", { name: "Begin my own logbook" }).press("Enter");
    await page.getByText(/^Your own logbook is open, empty/).waitFor({ timeout: 60_000 });
    expect(await page.locator("#file-name").textContent()).toBe("my-logbook.xlsx");
    // My bench is asked once, and the next task begins from it.
    await page.getByLabel("Titrant strength").fill("0.0985");
    await page.getByLabel("Burette step").fill("0.05");
    await page.getByRole("button", { name: "Keep for good in the workbook" }).click();
    await page.getByText(/Kept on the sheet My bench/).waitFor({ timeout: 30_000 });
    await page.getByRole("button", { name: "Titrate", exact: true }).click();
    // it opens at the oil: the line says what it goes by
    await page.getByText(/My bench: KOH 0\.0985/).waitFor({ timeout: 20_000 });
    await page.getByRole("button", { name: "This cell" }).click();
    await openSheet(page, "Titrations");
    await typeInto(page, "B4", "D-1");
    await typeInto(page, at("Titrations", "Titre 1 mL", 1), "2.45");
    const { bytes } = await saveByKeyboard(page);
    const workbook = openXlsx(bytes);
    if (isFileProblem(workbook)) throw new Error(sayFile(workbook));
    expect(workbook.sheets.map(({ name }) => name)).toEqual([
      "Start here",
      "Titrations",
      "Batches",
      "Blends",
      "Lots",
      "Titrants",
      "My bench",
      "Cautions",
    ]);
    const [titrations, ...others] = workbook.sheets.slice(1);
    const typed = titrations?.cells.filter(
      ({ row, formula, value }) => row === 3 && formula === undefined && value !== undefined,
    );
    expect(typed?.map(({ value }) => value)).toEqual(["D-1", 2.45]);
    const shown = others.flatMap(({ cells }) =>
      cells.flatMap(({ formula, value }) => (formula === undefined ? [] : [value])),
    );
    expect(shown.length).toBeGreaterThan(10);
    expect(new Set(shown)).toEqual(new Set([""]));
    const bench = workbook.sheets.find(({ name }) => name === "My bench")?.cells ?? [];
    const figures = bench.flatMap(({ value }) => (typeof value === "number" ? [value] : []));
    expect(figures).toEqual([0.0985, 0.05]);
    expect(complaints).toEqual([]);
  });

  it("is sorted as soon as it has rows, which may be typed into as the first may, in the file too", async () => {
    const { page, complaints } = await served.open();
    await page.goto(served.address);
    await page.waitForSelector("#save:enabled", { timeout: 60_000 });
    // the two ways of a newcomer make room for a task, and come back
    const tasks = page.locator("#pane nav").first();
    await tasks.getByRole("button", { name: "Card", exact: true }).click();
    const begin = page.getByRole("button", { name: "Begin my own logbook" });
    await begin.waitFor({ state: "detached" });
    await tasks.getByRole("button", { name: "This cell", exact: true }).click();
    await begin.click();
    await page.locator("#news-words").getByText("Your own logbook is open").waitFor();
    await page.getByRole("button", { name: "This cell" }).click();
    await openSheet(page, "Titrations");
    const titre = (row: number) => at("Titrations", "Titre 1 mL", row);
    for (const [row, lot, text] of [
      [1, "D-1", "2.45"],
      [2, "D-2", "3.10"],
      [3, "D-3", "1.05"],
    ] as const) {
      await typeInto(page, `B${String(3 + row)}`, lot);
      await typeInto(page, titre(row), text);
    }
    const second = at("Titrations", "Titre 2 mL", 1);
    await typeInto(page, second, "2,45");
    await goTo(page, second);
    await paneSays(page, "“2,45” is words here, not a figure: type 2.45.");
    await goTo(page, titre(1));
    await page.focus("#tools");
    await page.keyboard.press("Enter");
    await page.getByRole("menuitem", { name: "Smallest first" }).click();
    await goTo(page, "B4");
    await page.locator("#pane").getByText("D-3").first().waitFor();
    const { bytes } = await saveByKeyboard(page);
    const workbook = openXlsx(bytes);
    if (isFileProblem(workbook)) throw new Error(sayFile(workbook));
    const sheet = workbook.sheets.find(({ name }) => name === "Titrations");
    const lots = sheet?.cells.filter(({ row, column }) => column === 1 && row > 2);
    expect(lots?.map(({ value }) => value)).toEqual(["D-3", "D-1", "D-2"]);
    // rows 4 to 6 of the sheet, each column by itself
    const rules = sheet?.validations.flatMap(({ areas }) => areas) ?? [];
    expect(rules.length).toBeGreaterThan(3);
    expect(new Set(rules.map(({ row, rows }) => `${String(row)} ${String(rows)}`))).toEqual(
      new Set(["3 3"]),
    );
    expect(complaints).toEqual([]);
  });
});
