/** What was typed and sorted since rows were inserted comes back step by step, then the rows, then what was typed before. */
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { bookOf } from "../../xlsx/files";
import { hasBrowser, type Served, serve } from "../browser";
import { goTo, gridIsReady, openBytes, standing, typeInto } from "../workbench-page";

const bytes = bookOf(
  [["Titre"], [3], [1], [2]]
    .map(([value], at) =>
      typeof value === "number"
        ? `<row r="${String(at + 1)}"><c r="A${String(at + 1)}"><v>${String(value)}</v></c></row>`
        : `<row r="1"><c r="A1" t="str"><v>${String(value)}</v></c></row>`,
    )
    .join(""),
);

async function fromSheet(page: Page, item: string): Promise<void> {
  await page.click("#tools");
  await page.getByRole("menuitem", { name: item }).click();
}

describe.runIf(hasBrowser)("undo across typing, rows inserted, and a sort", () => {
  let served: Served;
  beforeAll(async () => {
    served = await serve();
  });
  afterAll(() => served.close());

  it("comes back step by step as far as the opening, and all of it again forth", async () => {
    const { page, complaints } = await served.open({ viewport: { width: 1400, height: 800 } });
    await page.goto(served.address);
    await gridIsReady(page);
    await openBytes(page, "order.xlsx", bytes);
    const says = (address: string, words: string) =>
      expect
        .poll(async () => {
          await goTo(page, address);
          return page.locator("#pane").innerText();
        })
        .toContain(words);
    const news = (words: string) => page.locator("#news-words").getByText(words).first().waitFor();
    await typeInto(page, "A4", "22");
    await typeInto(page, "B1", "once");
    await goTo(page, "A3");
    await fromSheet(page, "Insert rows above");
    await news("1 row inserted above row 3");
    await typeInto(page, "A3", "47");
    await goTo(page, "A3");
    await fromSheet(page, "Largest first");
    await says("A2", "47");
    await says("A3", "22");
    await page.keyboard.press("Control+z");
    await says("A3", "47");
    await says("A5", "22");
    await page.keyboard.press("Control+z");
    await says("A3", "Empty");
    await page.keyboard.press("Control+z");
    await news("Taken back: 1 row inserted");
    await says("A4", "22");
    await page.keyboard.press("Control+z");
    await news("Taken back: what was typed or changed in 2 cells.");
    await says("A4", "2");
    await says("B1", "Empty");
    // nothing is before the opening
    await page.keyboard.press("Control+z");
    await says("A4", "2");
    await page.keyboard.press("Control+y");
    await news("Done again: what was typed or changed in 2 cells.");
    await says("A4", "22");
    await says("B1", "once");
    await page.keyboard.press("Control+y");
    await news("Done again: 1 row inserted");
    await says("A5", "22");
    await says("A3", "Empty");
    // the typing and the sort after the row: one step, since the file was shown anew
    await page.keyboard.press("Control+y");
    await news("Done again: what was typed or changed in 4 cells.");
    await says("A2", "47");
    await says("A3", "22");
    await standing(page, "kept in this browser only");
    await page.reload();
    await page.locator("#news-words").getByText("is open again").first().waitFor();
    await says("A2", "47");
    await says("B1", "once");
    await page.keyboard.press("Control+z");
    await says("A2", "47");
    expect(complaints).toEqual([]);
  });
});
