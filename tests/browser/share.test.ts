/**
 * The task of sharing in Chromium: by keyboard alone to a file that is saved, and what every state must
 * hold.
 */
import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { isFileProblem, openXlsx } from "../../src/xlsx";
import { QuickHand } from "../taskpane/page/bench";
import { screenFaults } from "../taskpane/page/checks";
import { faultsInEveryLook } from "../taskpane/page/looks";
import { openChromium, type PaneBrowser } from "../taskpane/page/open-page";
import { hasBrowser } from "./browser";

/** Screenshots, where somebody asks for them. */
async function shot(page: Page, name: string): Promise<void> {
  const folder = process.env.SHARE_SHOTS;
  if (folder) await page.screenshot({ path: `${folder}/${name}.png`, fullPage: true });
}

async function saved(page: Page, press: () => Promise<void>) {
  const waiting = page.waitForEvent("download");
  await press();
  const download = await waiting;
  const path = await download.path();
  return { name: download.suggestedFilename(), bytes: new Uint8Array(readFileSync(path)) };
}

describe.runIf(hasBrowser)("the task of sharing", () => {
  let chromium: PaneBrowser;
  beforeAll(async () => {
    chromium = await openChromium();
  });
  afterAll(async () => {
    await chromium.close();
  });

  it.each([
    ["Partner copy", /^partner-copy-\d{4}-\d\d-\d\d\.xlsx$/, "Workings"],
    ["Numbers only", /^numbers-only-\d{4}-\d\d-\d\d\.xlsx$/, "Read me"],
  ])("saves a file by keyboard: %s", async (button, name, sheet) => {
    const { page, complaints } = await chromium.open(
      { viewport: { width: 320, height: 700 }, reducedMotion: "reduce" },
      "task=share&file=logbook",
    );
    const hand = new QuickHand(page);
    await page.getByRole("heading", { name: "For a partner" }).waitFor();
    await page.getByRole("button", { name: button, disabled: false }).waitFor();
    await shot(page, "ready");
    expect(await faultsInEveryLook(page)).toEqual([]);
    const file = await saved(page, () => hand.press(button));
    expect(file.name).toMatch(name);
    const opened = openXlsx(file.bytes);
    expect(isFileProblem(opened)).toBe(false);
    if (!isFileProblem(opened)) {
      expect(opened.sheets.map((each) => each.name)).toContain(sheet);
      const formulas = opened.sheets.flatMap(({ cells }) => cells.map((cell) => cell.formula));
      expect(formulas.filter((formula) => formula?.includes("TITRE."))).toEqual([]);
    }
    await page.getByText("The copy is made.").waitFor();
    expect(await hand.hears()).toMatch(/^Save .*\.xlsx$/);
    await shot(page, button.replace(" ", "-"));
    expect(await faultsInEveryLook(page)).toEqual([]);
    const again = await saved(page, () => page.keyboard.press("Enter"));
    expect(again.bytes).toEqual(file.bytes);
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  it("says that a program does not hand out its file, and how else a copy is made", async () => {
    const { page } = await chromium.open({ viewport: { width: 320, height: 700 } }, "task=share");
    await page.getByText(/npm run share/).waitFor();
    await shot(page, "not-offered");
    expect(await page.getByRole("button").count()).toBe(0);
    expect(await screenFaults(page, 320)).toEqual([]);
  });

  it.each([
    ["opens", /The copy is open as a new workbook/],
    ["opens-none", /too large for this program to open/],
  ])(
    "says where the copy is only once it is there, and offers no link that is not heard: %s",
    async (kind, says) => {
      const { page, complaints } = await chromium.open(
        { viewport: { width: 320, height: 700 } },
        `task=share&file=${kind}`,
      );
      await page.getByRole("button", { name: "Partner copy", disabled: false }).press("Enter");
      await page.getByText(says).waitFor();
      await shot(page, kind);
      expect(await page.getByText("The copy is made.").count()).toBe(0);
      expect(await page.getByRole("link", { name: /^Save/ }).count()).toBe(0);
      expect(await screenFaults(page, 320)).toEqual([]);
      expect(complaints).toEqual([]);
    },
  );

  it("says that a cell is being edited, and tries again at a press", async () => {
    const { page } = await chromium.open(
      { viewport: { width: 320, height: 700 } },
      "task=share&file=edited",
    );
    await page.getByRole("button", { name: "Partner copy" }).press("Enter");
    await page.getByText(/A cell is being edited/).waitFor();
    await shot(page, "failed");
    expect(await screenFaults(page, 320)).toEqual([]);
    await page.getByRole("button", { name: "Numbers only" }).press("Enter");
    await page.getByText(/A cell is being edited/).waitFor();
  });
});
