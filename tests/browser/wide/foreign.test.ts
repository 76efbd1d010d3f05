/**
 * Foreign workbooks by chance through the page itself, one after another without a reload: opened, some
 * inputs typed over, saved. Every figure in the saved file is LibreOffice's from the same inputs, or the
 * one of before in a file that asks to be worked out. FOREIGN sets how many, FOREIGN_FROM the
 * first seed: most of each change go through the engine without the page (tests/spreadsheet/foreign.test.ts).
 */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readCellName } from "../../../src/xlsx/cell-address";
import { hasLibreOffice, shownBy } from "../../spreadsheet/xlsx/libreoffice";
import { opened } from "../../workbench/file";
import { Chance } from "../../workbench/foreign/chance";
import { judge, resultsIn } from "../../workbench/foreign/judge";
import { foreignWorkbook, log } from "../../workbench/foreign/workbook";
import { hasBrowser, type OpenPage, type Served, serve } from "../browser";
import { saveByKeyboard, typeInto } from "../workbench-page";

const isInstalled = hasLibreOffice();
const isRequired = process.env.REQUIRE_ALL === "1";
if (!isInstalled && !isRequired) console.warn("skipped: LibreOffice is not installed");

const count = Number(process.env.FOREIGN ?? 3);
const from = Number(process.env.FOREIGN_FROM ?? 1);

const typed = (chance: Chance) => chance.one(["2.5", "7", "0", "0.125", "-3", "11", "oak"]);

/** What the cell of the sheet of inputs holds in a file. */
function valueIn(bytes: Uint8Array): (address: string) => unknown {
  const sheet = opened(bytes).sheets.find(({ name }) => name === log);
  const values = new Map(sheet?.cells.map((cell) => [`${cell.row},${cell.column}`, cell.value]));
  return (address) => {
    const { row, column } = readCellName(address) ?? { row: -1, column: -1 };
    return values.get(`${row},${column}`);
  };
}

describe.runIf(hasBrowser && (isInstalled || isRequired))("a foreign workbook in the page", () => {
  let served: Served;
  let shown: OpenPage;

  beforeAll(async () => {
    served = await serve();
    shown = await served.open();
    await shown.page.goto(served.address);
    await shown.page.waitForSelector("#save:enabled", { timeout: 60_000 });
  }, 120_000);
  afterAll(async () => {
    await shown.page.context().close();
    await served.close();
  });

  async function openedAndSaved(
    name: string,
    bytes: Uint8Array,
    edits: readonly [string, string][],
  ) {
    const { page } = shown;
    const news = page.locator("#news-words");
    const mimeType = "application/octet-stream";
    const buffer = Buffer.from(bytes);
    await page.locator("#chooser").setInputFiles({ name: `${name}.xlsx`, mimeType, buffer });
    await news.getByText(`${name}.xlsx is open.`).waitFor({ timeout: 60_000 });
    for (const [address, text] of edits) await typeInto(page, address, text);
    return (await saveByKeyboard(page)).bytes;
  }

  it(
    "is saved with LibreOffice's figures, one workbook after another in the same page",
    async () => {
      const foreign = Array.from({ length: count }, (_, at) => foreignWorkbook(from + at));
      const nameOf = (seed: number) => `foreign${String(seed)}`;
      const bare = shownBy(new Map(foreign.map((each) => [nameOf(each.seed), each.bytes()])), 0);
      const before = new Map<string, Uint8Array>();
      const saved = new Map<string, Uint8Array>();
      for (const each of foreign) {
        const name = nameOf(each.seed);
        const chance = new Chance(each.seed + 200_000);
        const bytes = each.bytes(resultsIn(bare, name, each));
        const edits = [0, 1].map((): [string, string] => [chance.one(each.inputs), typed(chance)]);
        before.set(name, bytes);
        saved.set(name, await openedAndSaved(name, bytes, edits));
      }
      const after = shownBy(saved, 0);
      const wrong: string[] = [];
      const unmentioned: string[] = [];
      let live = 0;
      for (const each of foreign) {
        const name = nameOf(each.seed);
        const made = saved.get(name) ?? new Uint8Array();
        const [was, is] = [valueIn(before.get(name) ?? made), valueIn(made)];
        // one that is as it was may be held, and one without a result was doubted; the others were worked out here
        const isKept = (address: string) =>
          (is(address) ?? "") === "" ||
          JSON.stringify(was(address)) === JSON.stringify(is(address));
        const verdict = judge(each, made, resultsIn(after, name, each), isKept);
        wrong.push(...verdict.wrong);
        unmentioned.push(...verdict.unmentioned);
        live += verdict.live;
      }
      expect(wrong).toEqual([]);
      expect(unmentioned).toEqual([]);
      // something changed, and was worked out
      expect(live).toBeGreaterThan(count);
      expect(shown.complaints).toEqual([]);
    },
    count * 60_000,
  );
});
