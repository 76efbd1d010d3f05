/**
 * LibreOffice sorts the same rows of the same files by the same column, and then holds the same as the file
 * saved here: values, formulas and what they come to. Rows that a filter hides here are hidden there, and
 * are the same when it asks the filters itself. Both results are told by LibreOffice.
 */
import { describe, expect, it } from "vitest";
import { isRefused } from "../../../src/sheet/refusal";
import type { Criterion } from "../../../src/xlsx";
import { doFilter, filterBlock } from "../../../src/workbench/filtering/do-filter";
import { doSort } from "../../../src/workbench/sorting/do-sort";
import type { Direction } from "../../../src/workbench/sorting/order";
import { planSort } from "../../../src/workbench/sorting/plan-sort";
import { isWide } from "../../is-wide";
import { type FileInGrid, inGrid } from "../../workbench/file";
import { main, office, zipped } from "../../xlsx/files";
import { hasLibreOffice } from "../xlsx/libreoffice";
import { Dice } from "./books";
import { type Job, toldBy } from "./libreoffice";

const isInstalled = hasLibreOffice();
const isRequired = process.env.REQUIRE_ALL === "1";
if (!isInstalled && !isRequired) console.warn("skipped: LibreOffice is not installed");

const many = isWide ? 12 : 4;
const rows = 14;

const packaged = "http://schemas.openxmlformats.org/package/2006";
const type = "application/vnd.openxmlformats-officedocument";
const text = (name: string, words: string): string =>
  words === "" ? "" : `<c r="${name}" t="inlineStr"><is><t>${words}</t></is></c>`;
const figure = (name: string, value: number): string =>
  `<c r="${name}"><v>${String(value)}</v></c>`;
const worked = (name: string, formula: string): string => `<c r="${name}"><f>${formula}</f></c>`;

/**
 * What a column that is sorted by may hold: figures, words, nothing; the same more than once. Not TRUE and
 * FALSE: they count as figures in LibreOffice, and come after the words in the program whose format this is.
 */
function key(dice: Dice, name: string): string {
  switch (dice.roll(6)) {
    case 0:
      return text(
        name,
        dice.of(["Pier", "pier", "Lard", "cod oil", "Cod oil", "0.5", "north quay"]),
      );
    case 1:
      return "";
    case 2:
      return figure(name, -dice.roll(4));
    default:
      return figure(name, dice.roll(12) / 4);
  }
}

const headings = ["Lot", "Key", "Titre", "Twice", "Share", "Fixed"];
const ref = `A1:F${String(rows + 1)}`;
const table = `<table xmlns="${main}" id="1" name="Runs" displayName="Runs" ref="${ref}" totalsRowShown="0"><autoFilter ref="${ref}"/><tableColumns count="6">${headings.map((each, at) => `<tableColumn id="${String(at + 1)}" name="${each}"/>`).join("")}</tableColumns></table>`;

/** Lot, a key, a titre, and formulas of the own row, of fixed cells, of a cell elsewhere and of a column. */
function log(seed: number, hasTable = false): Uint8Array {
  const dice = new Dice(seed + 500);
  const cells = Array.from({ length: rows }, (_, index) => {
    const row = index + 2;
    return `<row r="${String(row)}">${[
      text(`A${String(row)}`, `Lot ${String(row)}`),
      key(dice, `B${String(row)}`),
      figure(`C${String(row)}`, dice.roll(90) / 10),
      worked(`D${String(row)}`, `C${String(row)}*$H$1+'Pier''s 2'!$A$1`),
      worked(`E${String(row)}`, `IF(B${String(row)}="","none",C${String(row)}/SUM(C$2:C$15))`),
      worked(`F${String(row)}`, dice.of(["$C$2", "H1", "Other!$A$2"]).replace("H1", "$H$1")),
    ].join("")}</row>`;
  });
  const first = `<row r="1">${headings.map((each, at) => text(`${"ABCDEF"[at] ?? ""}1`, each)).join("")}${figure("H1", 2)}</row>`;
  const outside = `<row r="20">${worked("A20", "C2&amp;A3")}${worked("B20", "SUM(C2:C15)")}</row>`;
  const sheet = (data: string, after = ""): string =>
    `<worksheet xmlns="${main}" xmlns:r="${office}"><sheetData>${data}</sheetData>${after}</worksheet>`;
  const tableParts = '<tableParts count="1"><tablePart r:id="rId1"/></tableParts>';
  const relations = (of: readonly (readonly [string, string])[]): string =>
    `<Relationships xmlns="${packaged}/relationships">${of
      .map(
        ([kind, target], at) =>
          `<Relationship Id="rId${String(at + 1)}" Type="${office}/${kind}" Target="${target}"/>`,
      )
      .join("")}</Relationships>`;
  const titles = ["Log", "Pier's 2", "Other"];
  return zipped({
    "[Content_Types].xml": `<Types xmlns="${packaged}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="${type}.spreadsheetml.sheet.main+xml"/>${titles
      .map(
        (_, at) =>
          `<Override PartName="/xl/worksheets/sheet${String(at + 1)}.xml" ContentType="${type}.spreadsheetml.worksheet+xml"/>`,
      )
      .join(
        "",
      )}${hasTable ? `<Override PartName="/xl/tables/table1.xml" ContentType="${type}.spreadsheetml.table+xml"/>` : ""}</Types>`,
    "_rels/.rels": relations([["officeDocument", "xl/workbook.xml"]]),
    "xl/workbook.xml": `<workbook xmlns="${main}" xmlns:r="${office}"><sheets>${titles
      .map(
        (name, at) =>
          `<sheet name="${name}" sheetId="${String(at + 1)}" r:id="rId${String(at + 1)}"/>`,
      )
      .join("")}</sheets></workbook>`,
    "xl/_rels/workbook.xml.rels": relations(
      titles.map((_, at) => ["worksheet", `worksheets/sheet${String(at + 1)}.xml`] as const),
    ),
    ...(hasTable && {
      "xl/worksheets/_rels/sheet1.xml.rels": relations([["table", "../tables/table1.xml"]]),
      "xl/tables/table1.xml": table,
    }),
    "xl/worksheets/sheet1.xml": sheet(first + cells.join("") + outside, hasTable ? tableParts : ""),
    "xl/worksheets/sheet2.xml": sheet(`<row r="1">${figure("A1", 7)}</row>`),
    "xl/worksheets/sheet3.xml": sheet(`<row r="2">${figure("A2", 3)}</row>`),
  });
}

/** The file as it is saved after something was done in its grid. */
async function savedAfter(bytes: Uint8Array, act: (file: FileInGrid) => void): Promise<Uint8Array> {
  let saved = bytes;
  await inGrid(bytes, async (file) => {
    act(file);
    await file.grid.computed();
    saved = await file.saved();
  });
  return saved;
}

const sorted = (bytes: Uint8Array, direction: Direction): Promise<Uint8Array> =>
  savedAfter(bytes, ({ grid, holding }) => {
    const terms = { cells: grid.cells, holding, fixed: undefined };
    const plan = planSort(terms, { sheet: "Log", row: 3, column: 1 }, direction);
    if (isRefused(plan)) throw new Error(plan.sentence);
    doSort(grid.injector, grid.cells, plan);
  });

const filtered = (bytes: Uint8Array, asked: readonly (readonly [number, Criterion])[]) =>
  savedAfter(bytes, ({ grid }) => {
    for (const [column, criterion] of asked) {
      const block = filterBlock(grid.cells, { sheet: "Log", row: 3, column });
      if (isRefused(block)) throw new Error(block.sentence);
      doFilter(grid.injector, grid.cells, block, column, criterion);
    }
  });

const criteria: readonly (readonly [number, Criterion])[][] = [
  [[1, { kind: "words", words: ["Lard", "pier", ""] }]],
  [[1, { kind: "figures", atLeast: 0.5, atMost: 2 }]],
  [
    [1, { kind: "figures", atLeast: -2 }],
    [2, { kind: "figures", atMost: 5 }],
  ],
];

describe.skipIf(!isInstalled && !isRequired)("LibreOffice", () => {
  it("sorts by figures, words and nothing as is done here, and hides the rows that filters hide here", async () => {
    expect(isInstalled).toBe(true);
    const jobs: Job[] = [];
    for (let seed = 0; seed < many; seed += 1) {
      const [bytes, direction] = [log(seed), seed % 2 === 0 ? ("up" as const) : ("down" as const)];
      const act = { do: `sort-${direction}`, sheet: "Log", column: 1 } as const;
      jobs.push({ bytes, act: { ...act, first: 1, count: rows, columns: 6 } });
      jobs.push({ bytes: await sorted(bytes, direction) });
    }
    for (const [seed, asked] of criteria.entries()) {
      const bytes = await filtered(log(seed, true), asked);
      jobs.push({ bytes }, { bytes, act: { do: "filter-again" } });
    }
    const told = toldBy(jobs);
    for (let pair = 0; pair < jobs.length; pair += 2) {
      const [first = [], second = []] = [told[pair], told[pair + 1]];
      expect(first.length).toBeGreaterThan(100);
      expect(second.sort()).toEqual(first.sort());
    }
    const hidden = told
      .slice(2 * many)
      .map((lines) => lines.filter((line) => line.startsWith("hidden|")));
    expect(hidden.every((lines) => lines.length > 0 && lines.length < rows)).toBe(true);
  });
});
