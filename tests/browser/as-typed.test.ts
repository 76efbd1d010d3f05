/**
 * What is typed, at whatever speed, is what is in the cell, whatever the list of functions offers; and
 * what is not worked out here says so in its cell, in the pane and in a list that can be had again.
 */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { opened } from "../workbench/file";
import { bookOf } from "../xlsx/files";
import { cases } from "../wide";
import { hasBrowser, type OpenPage, type Served, serve } from "./browser";
import { goTo, openBytes, paneSays, saveByKeyboard, typeInto } from "./workbench-page";

const bytes = bookOf(
  '<row r="1"><c r="A1"><v>2</v></c><c r="B1"><f>RAND()+A1</f><v>7</v></c><c r="C1"><f>LEN(A1)</f><v>1</v></c></row>',
);

describe.runIf(hasBrowser)("what is typed into the page's sheet", () => {
  let served: Served;
  let shown: OpenPage;

  beforeAll(async () => {
    served = await serve();
    shown = await served.open();
    const { page } = shown;
    await page.goto(served.address);
    await page.waitForSelector("#save:enabled", { timeout: 60_000 });
    await openBytes(page, "typed.xlsx", bytes);
  }, 120_000);
  afterAll(async () => {
    await shown.page.context().close();
    await served.close();
  });

  it.each(
    cases([0], [20]).flatMap((delay) =>
      cases(["=OFFSET(A1,0,0)", "=IF(A1>1,A1,3)", "=SUM"], ['=VALUE("2")', "=STDEV(A1,3)"]).map(
        (text, at) => [text, delay, `E${String(2 + at + delay)}`] as const,
      ),
    ),
  )("is in the cell: %s with %d ms a key", async (text, delay, address) => {
    const { page } = shown;
    await goTo(page, address);
    await page.keyboard.type(text, { delay });
    await page.keyboard.press("Enter");
    await goTo(page, "A1");
    await goTo(page, address);
    await page.locator("#pane code").getByText(text, { exact: true }).waitFor();
  });

  it("is taken from the list where it was gone to with the arrow keys", async () => {
    const { page } = shown;
    // Tab goes on, and Shift with it back, also out of a cell that is typed into
    const isAt = (address: string) => page.locator("#pane h2").getByText(address).waitFor();
    await goTo(page, "J9");
    for (const [key, address] of [
      ["Tab", "K9"],
      ["Shift+Tab", "J9"],
      ["Shift+Enter", "J8"],
    ] as const) {
      await page.keyboard.press(key);
      await isAt(address);
    }
    await page.keyboard.type("7", { delay: 20 });
    await page.keyboard.press("Shift+Tab");
    await isAt("I8");
    // at the edge there is no cell to go back to
    await goTo(page, "A9");
    await page.keyboard.press("Shift+Tab");
    await page.keyboard.press("ArrowDown");
    await isAt("A10");
    await goTo(page, "F2");
    await page.keyboard.type("=TITRE.COR", { delay: 60 });
    await page.locator('ul[data-u-comp="sheets-formula-editor"] li').first().waitFor();
    await page.keyboard.press("ArrowUp");
    await page.keyboard.press("Enter");
    // a hand takes longer than this from one key to the next word
    await page.waitForTimeout(300);
    await page.keyboard.type("A1,0.1)", { delay: 20 });
    await page.keyboard.press("Enter");
    await goTo(page, "F2");
    await page.locator("#pane code").getByText("=TITRE.CORRECTED(A1,0.1)").waitFor();
  });

  it.each(
    cases([0], [60]).flatMap((delay) =>
      cases(["=OFFSET(A1,0,0)", "oak"], ['=VALUE("2")', "=A1*2"]).map(
        (text, row) => [text, delay, 40 + delay + row] as const,
      ),
    ),
  )("is in the cell when Tab goes on to the next: %s, %d ms a key", async (text, delay, row) => {
    const { page } = shown;
    await goTo(page, `E${String(row)}`);
    await page.keyboard.type(text, { delay });
    await page.keyboard.press("Tab");
    await page
      .locator("#pane h2")
      .getByText(`F${String(row)}`)
      .waitFor();
    await goTo(page, `E${String(row)}`);
    const says = page.locator(text.startsWith("=") ? "#pane code" : "#pane .explain-value");
    await says.getByText(text, { exact: true }).waitFor();
  });

  it.each([
    ["=TITRE.CORR", [], "=TITRE.CORRECTED(A1,0.1)"],
    ["=STDEV.", ["ArrowDown"], "=STDEV.S(A1,0.1)"],
  ])("is completed by Tab from a list that has kept step: %s", async (letters, keys, formula) => {
    const { page } = shown;
    const address = letters.length > 8 ? "F3" : "F4";
    await goTo(page, address);
    await page.keyboard.type(letters, { delay: 60 });
    const list = page.locator('ul[data-u-comp="sheets-formula-editor"]');
    await list.getByText(letters.slice(1), { exact: true }).first().waitFor();
    for (const key of keys) await page.keyboard.press(key);
    await page.keyboard.press("Tab");
    // a hand takes longer than this from one key to the next word
    await page.waitForTimeout(300);
    await page.keyboard.type("A1,0.1)", { delay: 20 });
    await page.keyboard.press("Enter");
    await goTo(page, address);
    await page.locator("#pane code").getByText(formula, { exact: true }).waitFor();
  });

  it("leaves an empty cell where it is an apostrophe alone, in the sheet and in the file", async () => {
    const { page } = shown;
    await typeInto(page, "H2", "'");
    await typeInto(page, "H3", "=ISTEXT(H2)");
    await goTo(page, "H2");
    await page.locator("#pane .explain-value").getByText("Empty").waitFor();
    await goTo(page, "H3");
    await page.locator("#pane .explain-value").getByText("FALSE").waitFor();
    const { bytes } = await saveByKeyboard(page);
    const cells = opened(bytes).sheets[0]?.cells;
    const inH = (row: number) => cells?.find((cell) => cell.row === row && cell.column === 7);
    expect(inH(1)?.value ?? null).toBeNull();
    expect(inH(2)?.value).toBe(false);
  });

  it("is listed in grey, again and again, where its result is not saved", async () => {
    const { page } = shown;
    await goTo(page, "A1");
    await page.keyboard.type("TRUE");
    await page.keyboard.press("Enter");
    await goTo(page, "C1");
    await paneSays(page, /Spreadsheet programs come to different/);
    await saveByKeyboard(page);
    const words = page.locator("#news-words");
    // what the save has to say may come after the first press: the words of the save before are there still
    const listed = async (): Promise<boolean> => {
      await page.locator("#grey").click();
      const all = [
        /B1: It uses RAND/,
        /worked out here, and not saved/,
        /Spreadsheet programs come to different/,
      ];
      const counts = await Promise.all(all.map((each) => words.getByText(each).count()));
      return counts.every((count) => count > 0) && counts[2] === 1;
    };
    await expect.poll(listed, { timeout: 60_000, interval: 500 }).toBe(true);
    expect(shown.complaints).toEqual([]);
  });
});
