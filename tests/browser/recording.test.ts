/** Record in the pane, in Chromium: the first press counts, and an occupied row is passed by with one. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { fillSlip, QuickHand } from "../taskpane/page/bench";
import { openChromium, type PaneBrowser } from "../taskpane/page/open-page";
import { rarely } from "../wide";
import { hasBrowser } from "./browser";
import { lastRow, type PaneWindow } from "./host-in-page";

const slip = { lot: "NQ-44", titres: ["2.40", "2.50", "2.45"], blanks: ["0.15"] };

describe.runIf(hasBrowser)("Record", () => {
  let chromium: PaneBrowser;
  beforeAll(async () => {
    chromium = await openChromium();
  });
  afterAll(async () => {
    await chromium.close();
  });

  const toRecord = async (query = "") => {
    const { page } = await chromium.open({}, query);
    const hand = new QuickHand(page);
    await page.getByRole("heading", { level: 2 }).waitFor();
    await fillSlip(hand, slip);
    await hand.next("Result");
    await hand.next("Record");
    return { page, hand, record: page.getByRole("button", { name: "Record this titration" }) };
  };

  it("takes the first press, however soon after typing it comes, with what was typed", async () => {
    const { page, record } = await toRecord();
    await record.waitFor();
    await page.getByLabel("Note").pressSequentially("warm oil");
    await record.click();
    await page.getByText(/Written in row/).waitFor();
    expect((await lastRow(page, "Titrations")).Note).toBe("warm oil");
    await page.context().close();
  });

  rarely("takes a press that is still held when the plan is made anew", async () => {
    const { page, record } = await toRecord();
    await record.waitFor();
    await page.getByText("The exact cells").click();
    await page.getByLabel("Note").pressSequentially("warm oil");
    await record.hover();
    await page.mouse.down();
    // what would be written is planned again meanwhile, and shown
    await page.locator("dd", { hasText: "warm oil" }).waitFor();
    await page.mouse.up();
    await page.getByText(/Written in row/).waitFor();
    expect((await lastRow(page, "Titrations")).Note).toBe("warm oil");
    await page.context().close();
  });

  it("passes an occupied row by with one press, and writes nothing over", async () => {
    const { page, hand, record } = await toRecord("book=sample");
    await record.waitFor();
    await page.evaluate(() => {
      const { host } = (window as unknown as PaneWindow).titrebook;
      host.change(({ sheets, tables }) => {
        const table = tables.find(({ name }) => name === "Titrations");
        const sheet = sheets.find(({ name }) => name === "Titrations");
        if (!table || !sheet) return;
        const row = String(table.block.row + table.block.rows);
        sheet.cells[`${row},1`] = { value: "a remark", formula: "", format: "General" };
      });
    });
    await page.getByLabel("Note").pressSequentially("x");
    await page.getByText(/is not free: it holds "a remark"/).waitFor();
    expect(await page.getByRole("checkbox").count()).toBe(0);
    await hand.press("Use the next free row");
    await record.waitFor();
    await page.getByText(/Row 13, below it so far, becomes part of it/).waitFor();
    await hand.press("Record this titration");
    await page.getByText("Written in row 14 of the sheet Titrations.").waitFor();
    expect((await lastRow(page, "Titrations")).Lot).toBe("NQ-44");
    await page.context().close();
  });
});
