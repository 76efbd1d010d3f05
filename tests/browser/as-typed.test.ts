/**
 * What is typed, at whatever speed, is what is in the cell, whatever the list of functions offers; and
 * what is not worked out here says so in its cell, in the pane and in a list that can be had again.
 */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { bookOf } from "../xlsx/files";
import { hasBrowser, type OpenPage, type Served, serve } from "./browser";
import { goTo, paneSays } from "./workbench-page";

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
    const file = { name: "typed.xlsx", mimeType: "application/zip", buffer: Buffer.from(bytes) };
    await page.locator("#chooser").setInputFiles(file);
    await page.locator("#news-words").getByText("typed.xlsx is open.").waitFor();
  }, 120_000);
  afterAll(async () => {
    await shown.page.context().close();
    await served.close();
  });

  it.each(
    [0, 20].flatMap((delay) =>
      ["=OFFSET(A1,0,0)", '=VALUE("2")', "=STDEV(A1,3)", "=IF(A1>1,A1,3)", "=SUM"].map(
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
    await goTo(page, "F2");
    await page.keyboard.type("=TITRE.COR", { delay: 60 });
    await page.locator('ul[data-u-comp="sheets-formula-editor"] li').first().waitFor();
    await page.keyboard.press("ArrowUp");
    await page.keyboard.press("Enter");
    await page.keyboard.type("A1,0.1)", { delay: 20 });
    await page.keyboard.press("Enter");
    await goTo(page, "F2");
    await page.locator("#pane code").getByText("=TITRE.CORRECTED(A1,0.1)").waitFor();
  });

  it("is listed in grey, again and again, where its result is not saved", async () => {
    const { page } = shown;
    await goTo(page, "A1");
    await page.keyboard.type("TRUE");
    await page.keyboard.press("Enter");
    await goTo(page, "C1");
    await paneSays(page, /Programs do not agree/);
    await page.keyboard.press("Control+s");
    const words = page.locator("#news-words");
    await words.getByText("Saved as typed.xlsx").waitFor({ timeout: 60_000 });
    await page.locator("#grey").click();
    await words.getByText(/B1: It uses RAND/).waitFor();
    await words.getByText(/worked out here, and not saved/).waitFor();
    expect(await words.getByText(/Programs do not agree/).count()).toBe(1);
    expect(shown.complaints).toEqual([]);
  });
});
