/** Home and End go where they go in a spreadsheet; with Shift what lies between is selected. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { bookOf } from "../xlsx/files";
import { hasBrowser, type Served, serve } from "./browser";
import { goTo, gridIsReady, openBytes, openSheet, paneSays } from "./workbench-page";

const frozen =
  '<sheetViews><sheetView workbookViewId="0"><pane xSplit="1" ySplit="2" topLeftCell="B3" state="frozen"/></sheetView></sheetViews>';
const bytes = bookOf(
  '<row r="4"><c r="B4"><v>2</v></c></row><row r="8"><c r="D8"><v>3</v></c></row><row r="150"><c r="AB150"><v>1</v></c></row>',
  "",
  frozen,
);

describe.runIf(hasBrowser)("Home and End in the page's sheet", () => {
  let served: Served;
  beforeAll(async () => {
    served = await serve();
  });
  afterAll(() => served.close());

  it("go to the ends of the row and of the sheet, and Shift takes what lies between", async () => {
    const { page, complaints } = await served.open();
    await page.goto(served.address);
    await gridIsReady(page);
    await openBytes(page, "ends.xlsx", bytes);
    // the name box says what is selected
    const isAt = (address: string) =>
      expect.poll(() => page.locator("#grid input").first().inputValue()).toBe(address);
    await goTo(page, "C8");
    for (const [key, address] of [
      ["End", "AB8"],
      ["Home", "A8"],
      ["Control+End", "AB150"],
      ["Control+Home", "B3"],
      ["Shift+End", "B3:AB3"],
      ["Control+Shift+End", "B3:AB150"],
      ["Control+Home", "B3"],
      ["Shift+Home", "A3:B3"],
      ["ArrowDown", "B4"],
      ["Control+Shift+Home", "B3:B4"],
    ] as const) {
      await page.keyboard.press(key);
      await isAt(address);
    }
    expect(complaints).toEqual([]);
  });

  it.each(["a cell", "the line above the sheet"])(
    "stay within the text while it is typed in %s",
    async (where) => {
      const { page, complaints } = await served.open();
      await page.goto(served.address);
      await gridIsReady(page);
      await openBytes(page, "ends.xlsx", bytes);
      await goTo(page, "C8");
      await page.keyboard.type("abc", { delay: 20 });
      if (where !== "a cell") {
        await page.keyboard.press("Enter");
        await goTo(page, "C8");
        const line = await page.locator("#grid [data-u-comp=formula-bar]").boundingBox();
        // a finger's press takes its time
        await page.mouse.click((line?.x ?? 0) + 400, (line?.y ?? 0) + 14, { delay: 150 });
        await page.locator("[id*=FORMULA_BAR]:focus").waitFor({ state: "attached" });
      }
      for (const key of ["Home", "x", "End", "y", "Shift+Home", "z", "Home", "w"])
        await page.keyboard.press(key, { delay: 150 });
      await page.keyboard.press("Enter");
      await goTo(page, "C8");
      await paneSays(page, "wz");
      expect(complaints).toEqual([]);
    },
  );
});

/** What lies over what, in the line under the sheet, with several cells selected. */
describe.runIf(hasBrowser)("the line under the sheet", () => {
  let served: Served;
  beforeAll(async () => {
    served = await serve();
  });
  afterAll(() => served.close());

  it("has no sums where there is no room, and names of sheets before sums where there is some", async () => {
    const sums = async (width: number) => {
      const { page } = await served.open({ viewport: { width, height: 760 } });
      await page.goto(served.address);
      await gridIsReady(page);
      await openSheet(page, "Titrations");
      const nameBox = page.locator("#grid input").first();
      await nameBox.fill("F4:H6");
      await nameBox.press("Enter");
      await page.locator("#pane h2").getByText("F4").waitFor();
      return page.locator("#grid footer");
    };
    const wide = await sums(1400);
    await wide.getByText(/^Sum: /).waitFor();
    await wide.getByText(/^Average: /).waitFor();
    expect(await wide.getByText(/^Max: /).isVisible()).toBe(false);
    for (const name of ["Start here", "Blends", "Titrants", "Replicates"]) {
      const tab = await wide.getByText(name, { exact: true }).boundingBox();
      const sum = await wide.getByText(/^Sum: /).boundingBox();
      expect((tab?.x ?? 0) + (tab?.width ?? 0)).toBeLessThan((sum?.x ?? 0) - 76);
    }
    expect(await (await sums(320)).getByText(/^(Sum|Max): /).count()).toBe(0);
  });
});
