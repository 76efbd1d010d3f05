/**
 * LibreOffice sorts the same rows of the same files by the same column, and then holds the same as the file
 * saved here: values, formulas and what they come to. Both results are told by LibreOffice.
 */
import { describe, expect, it } from "vitest";
import { isRefused } from "../../../src/sheet/refusal";
import { doSort } from "../../../src/workbench/sorting/do-sort";
import type { Direction } from "../../../src/workbench/sorting/order";
import { planSort } from "../../../src/workbench/sorting/plan-sort";
import { inGrid } from "../../workbench/file";
import { main, office, zipped } from "../../xlsx/files";
import { hasLibreOffice } from "../xlsx/libreoffice";
import { Dice } from "./books";
import { type Job, toldBy } from "./libreoffice";

const isInstalled = hasLibreOffice();
const isRequired = process.env.REQUIRE_ALL === "1";
if (!isInstalled && !isRequired) console.warn("skipped: LibreOffice is not installed");

const many = 12;
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

/** Lot, a key, a titre, and formulas of the own row, of fixed cells, of a cell elsewhere and of a column. */
function log(seed: number): Uint8Array {
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
  const headings = ["Lot", "Key", "Titre", "Twice", "Share", "Fixed"];
  const first = `<row r="1">${headings.map((each, at) => text(`${"ABCDEF"[at] ?? ""}1`, each)).join("")}${figure("H1", 2)}</row>`;
  const outside = `<row r="20">${worked("A20", "C2&amp;A3")}${worked("B20", "SUM(C2:C15)")}</row>`;
  const sheet = (data: string): string =>
    `<worksheet xmlns="${main}"><sheetData>${data}</sheetData></worksheet>`;
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
      .join("")}</Types>`,
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
    "xl/worksheets/sheet1.xml": sheet(first + cells.join("") + outside),
    "xl/worksheets/sheet2.xml": sheet(`<row r="1">${figure("A1", 7)}</row>`),
    "xl/worksheets/sheet3.xml": sheet(`<row r="2">${figure("A2", 3)}</row>`),
  });
}

async function sorted(bytes: Uint8Array, direction: Direction): Promise<Uint8Array> {
  let saved = bytes;
  await inGrid(bytes, async (file) => {
    const terms = { cells: file.grid.cells, holding: file.holding, fixed: undefined };
    const plan = planSort(terms, { sheet: "Log", row: 3, column: 1 }, direction);
    if (isRefused(plan)) throw new Error(plan.sentence);
    doSort(file.grid.injector, file.grid.cells, plan);
    await file.grid.computed();
    saved = await file.saved();
  });
  return saved;
}

describe.skipIf(!isInstalled && !isRequired)("LibreOffice", () => {
  it("holds the same after rows are sorted by a column of figures, words and nothing", async () => {
    expect(isInstalled).toBe(true);
    const jobs: Job[] = [];
    for (let seed = 0; seed < many; seed += 1) {
      const [bytes, direction] = [log(seed), seed % 2 === 0 ? ("up" as const) : ("down" as const)];
      const act = {
        do: direction === "up" ? "sort-up" : "sort-down",
        sheet: "Log",
        column: 1,
      } as const;
      jobs.push({ bytes, act: { ...act, first: 1, count: rows, columns: 6 } });
      jobs.push({ bytes: await sorted(bytes, direction) });
    }
    const told = toldBy(jobs);
    for (let seed = 0; seed < many; seed += 1) {
      const [own = [], ours = []] = [told[2 * seed], told[2 * seed + 1]];
      expect(own.length).toBeGreaterThan(100);
      expect(ours.sort()).toEqual(own.sort());
    }
  });
});
