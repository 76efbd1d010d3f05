/** What is typed is kept whole and where it was meant, however far away the cell is that was gone to. */
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { cellName } from "../../src/sheet/cell-name";
import { hasBrowser, type Served, serve } from "./browser";
import { goTo, gridIsReady, openSheet } from "./workbench-page";

const heading = (page: Page) => page.locator("#pane h2").first();

describe.runIf(hasBrowser)("figures typed far from where one was", () => {
  let served: Served;
  beforeAll(async () => {
    served = await serve();
  });
  afterAll(() => served.close());

  const begun = async (width: number): Promise<Page> => {
    const { page } = await served.open({ viewport: { width, height: 850 } });
    await page.goto(served.address);
    await gridIsReady(page);
    await page.waitForSelector("#save:enabled", { timeout: 60_000 });
    await page.locator("#begin").click();
    await page.locator("#news-words").getByText("Your own logbook is open").waitFor();
    await page.locator("#pane nav").getByRole("button", { name: "This cell" }).click();
    await openSheet(page, "Titrations");
    return page;
  };

  const holds = async (page: Page, address: string, text: string): Promise<void> => {
    await goTo(page, address);
    await page.locator("#pane").getByText(text, { exact: true }).first().waitFor();
  };

  const type = async (page: Page, text: string, then: "Tab" | "Enter"): Promise<void> => {
    await page.keyboard.type(text);
    await page.keyboard.press(then);
  };

  it.each([900, 1400])("are whole after a jump to an address, at %i pixels", async (width) => {
    const page = await begun(width);
    const cells = ["CA80", "P81", "BZ130", "N4", "AO90", "C91", "D5000"];
    for (const [at, address] of cells.entries()) {
      await goTo(page, address);
      await type(page, `2.4${String(at + 1)}`, "Enter");
    }
    for (const [at, address] of cells.entries()) await holds(page, address, `2.4${String(at + 1)}`);
  });

  it.each([760, 820, 900, 1000])(
    "are whole beside a column that is wider than there is room, at %i pixels",
    async (width) => {
      const page = await begun(width);
      const columns = ["B", "F", "G", "H", "I", "L", "H", "G", "F"];
      for (const [at, column] of columns.entries()) {
        await goTo(page, `${column}${String(40 + at)}`);
        await type(page, `3.1${String(at + 1)}`, "Enter");
      }
      for (const [at, column] of columns.entries()) {
        await holds(page, `${column}${String(40 + at)}`, `3.1${String(at + 1)}`);
      }
    },
  );

  it("are whole in every column that Tab comes to", async () => {
    const page = await begun(1400);
    await goTo(page, "F60");
    for (let at = 10; at < 50; at += 1) await type(page, `3.${String(at)}1`, "Tab");
    for (let at = 10; at < 50; at += 1) {
      await holds(page, cellName(59, at - 5), `3.${String(at)}1`);
    }
  });

  it("stand below the cell that was gone to, and not below the one where Tab was pressed first", async () => {
    const page = await begun(1400);
    await goTo(page, "F10");
    await type(page, "2.45", "Tab");
    await type(page, "2.55", "Tab");
    await goTo(page, "N40");
    await type(page, "1.11", "Enter");
    await expect.poll(() => heading(page).innerText()).toContain("N41");
    // a run that is gone on with comes back below where it began
    await type(page, "1.21", "Tab");
    await type(page, "1.22", "Enter");
    await expect.poll(() => heading(page).innerText()).toContain("N42");
    await holds(page, "O41", "1.22");
    await holds(page, "G10", "2.55");
  });

  it("stay in their cell when the name box is clicked, whose address is then gone to", async () => {
    const page = await begun(1400);
    const nameBox = page.locator('[data-u-comp="defined-name"] input');
    const places = [
      ["D50", "7.77", "H52"],
      ["H52", "8.88", "B12"],
    ] as const;
    await goTo(page, "D50");
    for (const [address, text, next] of places) {
      await page.keyboard.type(text);
      await nameBox.click();
      await type(page, next, "Enter");
      await expect.poll(() => heading(page).innerText()).toMatch(new RegExp(`${next}$`));
      await page.keyboard.type("9.99");
      await page.keyboard.press("Escape");
      await holds(page, address, text);
      await goTo(page, next);
    }
  });

  it("go nowhere after an address that is none, which is said and asked for again", async () => {
    const page = await begun(1400);
    await goTo(page, "D50");
    const nameBox = page.locator('[data-u-comp="defined-name"] input');
    await nameBox.click();
    for (const wrong of ["D5D6", "D9999999", "12"]) {
      await type(page, wrong, "Enter");
      const says = page.locator("#news-words").getByText(wrong);
      await says.waitFor();
      expect(await nameBox.inputValue()).toBe(wrong);
    }
    await type(page, "D51", "Enter");
    await expect.poll(() => heading(page).innerText()).toMatch(/D51$/);
  });

  it("are whole after a press of the formula line, however short", async () => {
    const page = await begun(1400);
    const line = await page
      .locator('[data-u-comp="formula-bar"] [data-u-comp="render-canvas"]')
      .first()
      .boundingBox();
    if (!line) throw new Error("There is no formula line.");
    const press = (delay: number) => page.mouse.click(line.x + 200, line.y + 13, { delay });
    const cells = ["D50", "D52", "D54", "D56"];
    for (const [at, address] of cells.entries()) {
      await goTo(page, address);
      if (at % 2 === 1) await page.keyboard.type("1");
      await press(at < 2 ? 0 : 80);
      await type(page, "23", "Enter");
      await expect.poll(() => heading(page).innerText()).toMatch(new RegExp(`D${51 + 2 * at}$`));
    }
    for (const [at, address] of cells.entries()) await holds(page, address, at % 2 ? "123" : "23");
  });
});
