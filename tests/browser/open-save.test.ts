/** Opening and saving workbooks on the page, by keyboard. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { isFileProblem, openXlsx, sayFile } from "../../src/xlsx";
import { partsOf } from "../xlsx/files";
import { root } from "../rules/sources-of";
import { rarely } from "../wide";
import { hasBrowser, type OpenPage, type Served, serve } from "./browser";
import { bigLogbook } from "./big-logbook";
import {
  at,
  chooserOf,
  goTo,
  openSheet,
  paneSays,
  saveByKeyboard,
  typeInto,
} from "./workbench-page";

const fixture = (name: string): string => join(root, `tests/second-opinion/xlsx/${name}.xlsx`);

interface NamedBytes {
  readonly name: string;
  readonly mimeType: string;
  readonly buffer: Buffer;
}

const asFile = (name: string, content: Uint8Array): NamedBytes => ({
  name,
  mimeType: "application/octet-stream",
  buffer: Buffer.from(content),
});

const dated = (name: string) => new RegExp(`^${name} \\d{4}-\\d\\d-\\d\\d \\d{4}\\.xlsx$`);

const news = (page: Page) => page.locator("#news-words");

/** Enter on the button Open, and a file chosen. */
async function choose(page: Page, file: string | NamedBytes): Promise<void> {
  await (await chooserOf(page)).setFiles(file);
}

async function open(page: Page, file: string | NamedBytes): Promise<void> {
  await choose(page, file);
  await news(page).getByText("is open.").waitFor({ timeout: 60_000 });
}

const save = saveByKeyboard;

function cellIn(bytes: Uint8Array, name: string, row: number, column: number) {
  const workbook = openXlsx(bytes);
  if (isFileProblem(workbook)) throw new Error(sayFile(workbook));
  const sheet = workbook.sheets.find((each) => each.name === name);
  return sheet?.cells.find((cell) => cell.row === row && cell.column === column);
}

const changedParts = (before: Uint8Array, after: Uint8Array): string[] => {
  const [old, now] = [partsOf(before), partsOf(after)];
  return Object.keys({ ...old, ...now }).filter((name) => old[name] !== now[name]);
};

describe.runIf(hasBrowser)("opening and saving on the page", () => {
  let served: Served;
  let opened: OpenPage;

  /** One page for all of them, as for a person: each opens a file of its own, the first the sample. */
  beforeAll(async () => {
    served = await serve();
    opened = await served.open();
    // heard from now on: Enter is quicker than the first call to listen
    opened.page.on("filechooser", () => undefined);
    await opened.page.goto(served.address);
    await opened.page.waitForSelector("#save:enabled", { timeout: 60_000 });
  });
  afterAll(() => served.close());
  afterEach(() => {
    expect(opened.complaints).toEqual([]);
  });

  it("saves the sample with its functions as files hold them", async () => {
    const { page } = opened;
    await openSheet(page, "Batches");
    await typeInto(page, at("Batches", "Amount", 1), "200");
    const { bytes, download } = await save(page);
    expect(download.suggestedFilename()).toMatch(dated("logbook"));
    const sheets = Object.entries(partsOf(bytes)).filter(([name]) => name.includes("worksheets/"));
    expect(sheets.some(([, text]) => text.includes("_xldudf_TITRE_OILMASS("))).toBe(true);
    expect(sheets.every(([, text]) => !/<f[^>]*>[^<]*TITRE\./.test(text))).toBe(true);
    await open(page, asFile("logbook.xlsx", bytes));
    await openSheet(page, "Batches");
    await goTo(page, at("Batches", "Oil kg", 1));
    // By hand: 200 L x 0.915 = 183 kg.
    await paneSays(page, /^183\.00$/);
  });

  it("opens, edits, saves and opens again by keyboard, with every other part as it was", async () => {
    const { page } = opened;
    await open(page, fixture("charts"));
    await typeInto(page, "C5", "2.5");
    await goTo(page, "E5");
    // By hand: 56.1 x 0.1 x 2.5 / 10.02 = 1.3997...
    await paneSays(page, /^1\.40$/);
    const { bytes, download } = await save(page);
    expect(download.suggestedFilename()).toMatch(dated("charts"));
    expect(changedParts(readFileSync(fixture("charts")), bytes)).toEqual([
      "xl/worksheets/sheet1.xml",
    ]);
    expect(cellIn(bytes, "Log book", 4, 2)?.value).toBe(2.5);
    expect(cellIn(bytes, "Log book", 4, 4)?.value).toBeCloseTo((56.1 * 0.1 * 2.5) / 10.02, 12);
    await open(page, asFile("again.xlsx", bytes));
    await goTo(page, "C5");
    await paneSays(page, /^2\.50$/);
  });

  it("saves calls in brackets as they were typed, and opens them again with the same figures", async () => {
    const { page } = opened;
    await open(page, fixture("tidy"));
    const typed = [
      ["F20", "=(TITRE.ACIDVALUE(2.3,0.1,10))/1000"],
      ["F21", "=-( (STDEV.S({1,2,3})) )%"],
    ] as const;
    for (const [cell, formula] of typed) await typeInto(page, cell, formula);
    const { bytes } = await save(page);
    const [first, second] = [19, 20].map((row) => cellIn(bytes, "Bob's log, 2026", row, 5));
    expect([first?.formula, second?.formula]).toEqual(typed.map(([, formula]) => formula));
    // By hand: 56.1 x 0.1 x 2.3 / 10 = 1.2903; the deviation of 1, 2, 3 is 1.
    expect([first?.value, second?.value]).toEqual([0.0012903, -0.01]);
    const parts = Object.values(partsOf(bytes)).join("");
    expect(parts).toContain("<f>(_xldudf_TITRE_ACIDVALUE(2.3,0.1,10))/1000</f>");
    expect(parts).toContain("<f>-( (_xlfn.STDEV.S({1,2,3})) )%</f>");
    await open(page, asFile("again.xlsx", bytes));
    await goTo(page, "F20");
    await paneSays(page, "TITRE.ACIDVALUE");
  });

  it("lists what the grid does not show, and saves the same bytes when nothing was edited", async () => {
    const { page } = opened;
    await open(page, fixture("charts"));
    const list = await page.locator("#news li").allInnerTexts();
    // both are drawn
    expect(list).not.toContain("2 charts on Log book");
    await page.locator(".chart-frame[role=img] svg").nth(1).waitFor();
    expect(list).toContain("3 conditional formats on Log book");
    const { bytes } = await save(page);
    expect(Buffer.from(bytes).equals(readFileSync(fixture("charts")))).toBe(true);
  });

  it("refuses a broken file with a sentence, and the open workbook stays as it is", async () => {
    const { page } = opened;
    await open(page, fixture("tidy"));
    const half = readFileSync(fixture("charts")).subarray(0, 3000);
    await choose(page, asFile("half.xlsx", half));
    await news(page)
      .getByText(/half\.xlsx was not opened\. .* The workbook before it is still open\./)
      .waitFor();
    expect(await page.locator("#file-name").innerText()).toBe("tidy.xlsx");
    await typeInto(page, "B2", "2.5");
    expect(cellIn((await save(page)).bytes, "Bob's log, 2026", 1, 1)?.value).toBe(2.5);
  });

  it("opens a file that is dropped on the page", async () => {
    const { page } = opened;
    const bytes = [...readFileSync(fixture("office"))];
    const carried = await page.evaluateHandle((content) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([new Uint8Array(content)], "office.xlsx"));
      return transfer;
    }, bytes);
    await page.dispatchEvent("#grid", "dragover", { dataTransfer: carried });
    await page.dispatchEvent("#grid", "drop", { dataTransfer: carried });
    await news(page).getByText("office.xlsx is open").waitFor();
    await page.locator("#grid").getByText("Sheet of lots").waitFor();
  });

  it("asks before the page is left with an edit that is not kept yet, and keeps it for another file", async () => {
    const { page } = opened;
    await open(page, fixture("tidy"));
    await typeInto(page, "B2", "2.5");
    expect(await page.locator("#standing").innerText()).toBe("not kept yet");
    const asked = page.waitForEvent("dialog");
    void page.close({ runBeforeUnload: true });
    const dialog = await asked;
    expect(dialog.type()).toBe("beforeunload");
    await dialog.dismiss();
    await typeInto(page, "B2", "2.6");
    await choose(page, fixture("office"));
    await news(page).getByText("office.xlsx is open.").waitFor();
    expect(await page.locator("#file-name").innerText()).toBe("office.xlsx");
    await page.keyboard.press("Control+o");
    await page.getByRole("button", { name: /^Open tidy\.xlsx.*kept in this browser only/ }).click();
    await news(page).getByText("tidy.xlsx is open again").waitFor();
    await goTo(page, "B2");
    await paneSays(page, /^2\.60?$/);
  });

  it("asks before the page is left while edits are still being written", async () => {
    const { page } = opened;
    await open(page, fixture("tidy"));
    await typeInto(page, "B2", "2.5");
    const asked = await page.evaluate(
      () =>
        new Promise<boolean[]>((done) => {
          const seen: boolean[] = [];
          const look = (): void => {
            const words = document.getElementById("news-words")?.textContent ?? "";
            if (words.startsWith("Saved as")) {
              done(seen);
              return;
            }
            const leaving = new Event("beforeunload", { cancelable: true });
            window.dispatchEvent(leaving);
            seen.push(leaving.defaultPrevented);
            setTimeout(look);
          };
          const press = { key: "s", ctrlKey: true, bubbles: true };
          document.body.dispatchEvent(new KeyboardEvent("keydown", press));
          look();
        }),
    );
    expect(asked).not.toContain(false);
    expect(asked.length).toBeGreaterThan(1);
  });

  it("refuses what the file could not be told before it is done: cutting", async () => {
    const { page } = opened;
    await open(page, fixture("tidy"));
    await goTo(page, "B2");
    await page.keyboard.press("Control+x");
    await news(page).getByText("Cells cannot be moved here").waitFor();
    expect(await page.locator("#file-name").innerText()).toBe("tidy.xlsx");
  });

  it("saves what is still being typed", async () => {
    const { page } = opened;
    await open(page, fixture("tidy"));
    await goTo(page, "B2");
    await page.keyboard.type("3.25", { delay: 20 });
    expect(cellIn((await save(page)).bytes, "Bob's log, 2026", 1, 1)?.value).toBe(3.25);
  });

  rarely("keeps nothing of a file once another one is open", async () => {
    const { page } = opened;
    const session = await page.context().newCDPSession(page);
    const kept = async () => {
      await session.send("HeapProfiler.collectGarbage");
      const { nodes, jsEventListeners } = await session.send("Memory.getDOMCounters");
      const { usedSize } = await session.send("Runtime.getHeapUsage");
      return { nodes, listeners: jsEventListeners, megabytes: usedSize / 1024 / 1024 };
    };
    const round = async () => {
      await open(page, fixture("charts"));
      await open(page, fixture("tidy"));
    };
    for (let count = 0; count < 2; count += 1) await round();
    const before = await kept();
    for (let count = 0; count < 4; count += 1) await round();
    const after = await kept();
    // eight files: each once left 21 listeners behind
    expect(after.listeners - before.listeners).toBeLessThan(8);
    expect(after.nodes - before.nodes).toBeLessThan(80);
    // the engine's own code, as it is made quicker, takes up to 0.2 a file; a workbook takes more
    expect(after.megabytes - before.megabytes).toBeLessThan(4);
  });

  rarely("opens and saves 10,000 rows of 20 columns, and says how far it is", async () => {
    const { page } = opened;
    await page.evaluate(() => {
      const said: string[] = [];
      const words = document.getElementById("news-words");
      new MutationObserver(() => said.push(words?.textContent ?? "")).observe(
        words as HTMLElement,
        { childList: true },
      );
      Object.assign(window, { said });
    });
    await open(page, asFile("big.xlsx", bigLogbook()));
    const said = await page.evaluate(() => (window as unknown as { said: string[] }).said);
    expect(said).toContain("Laying out big.xlsx.");
    // how often the share worked out is told depends on how quick the machine is
    const shares = said.filter((words) => words.startsWith("Working out"));
    expect(shares.filter((words) => !/^Working out big\.xlsx: \d+ %\.$/.test(words))).toEqual([]);
    await typeInto(page, "C9000", "3");
    const { bytes } = await save(page);
    expect(cellIn(bytes, "Data", 8999, 2)?.value).toBe(3);
    // By hand: the column is ten times the third one.
    expect(cellIn(bytes, "Data", 8999, 19)?.value).toBe(30);
  });
});
