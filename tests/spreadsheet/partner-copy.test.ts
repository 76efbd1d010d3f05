/**
 * A partner copy in LibreOffice: formulas in every place a file can hold them come out as the functions
 * themselves do; a partner types another titre and saves, and the answers follow. Where LibreOffice is
 * not installed this is left out, and says so; with REQUIRE_ALL=1 a missing one fails.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { areaName } from "../../src/sheet/cell-name";
import { isProblem } from "../../src/core/problem/problem";
import { evaluateFormula } from "../functions/evaluate-formula";
import { shareWorkbook, type Shared } from "../../src/partner/sharing";
import { isFileProblem, newXlsx, sayFile } from "../../src/xlsx";
import { batches } from "../../src/workbook/tables/batches";
import { blends } from "../../src/workbook/tables/blends";
import { lyeLotsTable } from "../../src/workbook/tables/lye-lots";
import { tableSheet } from "../../src/workbook/tables/sheet";
import { sampleLogbook } from "../../src/workbook/sample/logbook";
import { root } from "../rules/sources-of";
import { cellIn, opened, valueIn } from "../xlsx/answers";
import { partsOf, partsWith, sheetOf, zipped } from "../xlsx/files";
import { hasLibreOffice, type Shown, shownBy } from "./xlsx/libreoffice";
import { savedByPartner } from "./xlsx/partner";

const isInstalled = hasLibreOffice();
const isRequired = process.env.REQUIRE_ALL === "1";
if (!isInstalled && !isRequired) console.warn("skipped: LibreOffice is not installed");

function shared(bytes: Uint8Array): Shared {
  const made = shareWorkbook(bytes, { kind: "partner", fileName: "log.xlsx" });
  if (isFileProblem(made)) throw new Error(sayFile(made));
  return made;
}

/** What the function itself answers. */
function answer(formula: string): number {
  const found = evaluateFormula(`=${formula}`);
  if (isProblem(found) || typeof found !== "number") throw new Error(formula);
  return found;
}

const near = (found: unknown, wanted: number, where: string): void => {
  expect(Math.abs(Number(found) / wanted - 1), `${where}: ${String(found)}`).toBeLessThan(1e-12);
};

const xml = (formula: string): string =>
  formula.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");

/** Titres and blanks in two rows, and the formulas below each other in column H. */
const inputs = [
  '<row r="1"><c r="A1"><v>2.4</v></c><c r="B1"><v>2.5</v></c><c r="C1"><v>2.45</v></c><c r="D1"><v>0.15</v></c><c r="E1"><v>10</v></c></row>',
  '<row r="2"><c r="A2"><v>4.8</v></c><c r="B2"><v>5</v></c><c r="D2"><v>0.25</v></c><c r="E2"><v>10.02</v></c></row>',
].join("");

const first = "{2.4,2.5,2.45},{0.15}";
const second = "{4.8,5},{0.25}";
const mean = (titres: string, mass: string) => `TITRE.MEANACIDVALUE(${titres},0.1,${mass})`;

/** A formula as a file holds it, and what it comes to by the functions themselves. */
const cases: readonly (readonly [string, number])[] = [
  ["_xldudf_TITRE_CORRECTED(A1:C1,D1)", answer(`TITRE.CORRECTED(${first})`)],
  [
    "ROUND(1000*titre.corrected(A2:C2,D2),0)",
    Math.round(1000 * answer(`TITRE.CORRECTED(${second})`)),
  ],
  ["[2]!_xldudf_TITRE_ACIDVALUE(A1-D1,0.1,E1)", answer("TITRE.ACIDVALUE(2.25,0.1,10)")],
  [
    "_xldudf_TITRE_FFAFROMACIDVALUE(_xldudf_TITRE_MEANACIDVALUE(A1:C1,D1,0.1,E1))",
    (answer(mean(first, "10")) * 282) / 561,
  ],
  ["_xldudf_TITRE_MEANACIDVALUE(A1:C1*2,D1*2,0.05,E1)", answer(mean(first, "10"))],
  [
    "_xldudf_TITRE_MEANACIDVALUE(A2:C2,D2,0.1,IF(COUNT(F2:G2)>0,F2:G2,E2))",
    answer(mean(second, "10.02")),
  ],
  ["_xldudf_TITRE_CORRECTED(titres,solvent)", answer(`TITRE.CORRECTED(${first})`)],
  [
    'INDEX(_xldudf_TITRE_BATCH(100,_xldudf_TITRE_MEANACIDVALUE(A1:C1,D1,0.1,E1),"KOH",90,0.765),9,2)',
    answer(`TITRE.DOSE(${first},0.1,10,100,"KOH",90,0.765)`),
  ],
  ["SUM(_xldudf_TITRE_EACHACIDVALUE(A1:C1,D1,0.1,E1))/3", answer(mean(first, "10"))],
  ["today*1", answer(`TITRE.CORRECTED(${second})`)],
];

function everyPlace(): Uint8Array {
  const rows = cases.map(
    ([formula], at) =>
      `<row r="${at + 10}"><c r="H${at + 10}"><f>${xml(formula)}</f><v>999.25</v></c></row>`,
  );
  const shares = [30, 31].map((n) => {
    const own = n === 30 ? ' ref="H30:H31"' : "";
    const text = n === 30 ? "TITRE.CORRECTED(A1:C1,D1)" : "";
    return `<row r="${n}"><c r="H${n}"><f t="shared"${own} si="0">${text}</f><v>999.25</v></c></row>`;
  });
  const spill =
    '<row r="40"><c r="H40"><f t="array" ref="H40:J40">TITRE.EACHACIDVALUE(A1:C1,D1,0.1,E1)</f><v>999.25</v></c><c r="I40"><v>999.25</v></c><c r="J40"><v>999.25</v></c></row>';
  const parts = partsWith(sheetOf(inputs + rows.join("") + shares.join("") + spill));
  const names =
    '<definedNames><definedName name="solvent">0.15</definedName><definedName name="titres">Data!$A$1:$C$1</definedName><definedName name="today">TITRE.CORRECTED(Data!$A$2:$C$2,Data!$D$2)</definedName></definedNames>';
  const workbook = (parts["xl/workbook.xml"] ?? "").replace("</sheets>", `</sheets>${names}`);
  return zipped({ ...parts, "xl/workbook.xml": workbook });
}

describe.skipIf(!isInstalled && !isRequired)("a partner copy in LibreOffice", () => {
  it("is there, or was not asked for", () => {
    expect(isInstalled).toBe(true);
  });

  it("works out formulas from every place of a file as the functions do, to 1e-12", () => {
    const { bytes, report } = shared(everyPlace());
    expect(report.left).toEqual([]);
    for (const [name, text] of Object.entries(partsOf(bytes))) {
      if (/sheet1\.xml|sheet2\.xml|workbook\.xml/.test(name)) {
        expect(text, name).not.toMatch(/_xldudf|titre\.[a-z]+\(/i);
      }
    }
    const shown = shownBy(new Map([["copy", bytes]]), 0)
      .get("copy")
      ?.get("Data");
    const at = (row: number, column: number) => (shown as Shown)[row - 1]?.[column];
    for (const [index, [formula, wanted]] of cases.entries())
      near(at(index + 10, 7), wanted, formula);
    near(at(30, 7), answer(`TITRE.CORRECTED(${first})`), "shared, first");
    near(at(31, 7), answer("TITRE.CORRECTED({4.8,5},{0.25})"), "shared, second");
    for (const [column, titre] of [2.4, 2.5, 2.45].entries()) {
      near(at(40, 7 + column), (56.1 * 0.1 * (titre - 0.15)) / 10, `spilled ${String(column)}`);
    }
  });

  it("works out a batch of two lots from its rows of Blends", () => {
    const batch = { Date: 46_296, Batch: "B-118", Lots: "SW-17, NQ-41", Amount: 100, Unit: "l" };
    const lye = { Base: "KOH", "Lye lot": "K-207", "Assay %": 90, "Charge %": 0.765 };
    const parts = [
      { Batch: "B-118", Lot: "SW-17", Amount: 60, Unit: "l" },
      { Batch: "B-118", Lot: "NQ-41", Amount: 40, Unit: "l" },
    ];
    const sample = sampleLogbook();
    const sheets = sample.sheets.map((sheet) => {
      if (sheet.name === "Batches") return tableSheet(batches, [{ ...batch, ...lye }]);
      return sheet.name === "Blends" ? tableSheet(blends, parts) : sheet;
    });
    const made = newXlsx({ ...sample, sheets });
    if (isFileProblem(made)) throw new Error(sayFile(made));
    const rows = shownBy(new Map([["blend", shared(made).bytes]]), 0)
      .get("blend")
      ?.get("Batches");
    const under = (heading: string): unknown => {
      const at = rows?.findIndex((row) => row.includes(heading)) ?? -1;
      return rows?.[at + 1]?.[rows[at]?.indexOf(heading) ?? -1];
    };
    // by hand: SW-17 has 14.6/3 - 0.15 mL on 10.02 g, NQ-41 2.3 mL on 10 g; 91.5 kg of oil
    const sour = (56.1 * 0.0998 * (14.6 / 3 - 0.15)) / 10.02;
    const acid = 0.6 * sour + (0.4 * 56.1 * 0.0998 * 2.3) / 10;
    near(under("Oil kg"), 91.5, "oil");
    near(under("Acid value mg KOH/g"), acid, "acid value");
    near(under("Catalyst g"), (91.5 * ((acid / 56.1) * 56.1053 + 7.65)) / 0.9, "catalyst");
  });

  it("holds the lots of lye as they were kept", () => {
    const kept = [
      { Lot: "K-11", Base: "KOH", "Assay %": 89.5, Since: 46_300, Note: "Second shelf." },
      { Lot: 207, Base: "NaOH", "Assay %": 99 },
    ];
    const sample = sampleLogbook();
    const made = newXlsx({ ...sample, sheets: [...sample.sheets, tableSheet(lyeLotsTable, kept)] });
    if (isFileProblem(made)) throw new Error(sayFile(made));
    const { bytes } = shared(made);
    const [before, after] = [made, bytes].map((file) =>
      opened(file).sheets.find(({ name }) => name === "LyeLots"),
    );
    expect(before?.tables.map(({ name }) => name)).toEqual(["LyeLots"]);
    expect(after).toEqual(before);
    const rows = shownBy(new Map([["lye", bytes]]), 0)
      .get("lye")
      ?.get("LyeLots");
    const at = rows?.findIndex((row) => row[0] === "Lot") ?? -1;
    expect(rows?.[at + 1]?.slice(0, 3)).toEqual(["K-11", "KOH", "89.5"]);
    expect(rows?.[at + 1]?.[4]).toBe("Second shelf.");
    expect(rows?.[at + 2]?.slice(0, 3)).toEqual(["207", "NaOH", "99"]);
  });

  it("follows a titre that a partner types, and the owner's file stays as it was", () => {
    const owner = new Uint8Array(readFileSync(join(root, "sample-workbooks", "logbook.xlsx")));
    const untouched = owner.slice();
    const titrations = opened(owner).sheets.find(({ name }) => name === "Titrations");
    const [table] = titrations?.tables ?? [];
    const headings = table?.columns.map(({ heading }) => heading) ?? [];
    const line = (table?.area.row ?? 0) + 2;
    const address = (heading: string): string => {
      const column = (table?.area.column ?? 0) + headings.indexOf(heading);
      const letters = column < 26 ? "" : String.fromCharCode(64 + Math.floor(column / 26));
      return letters + String.fromCharCode(65 + (column % 26)) + String(line);
    };
    const lot = valueIn(opened(owner), address("Lot"), "Titrations");
    expect(lot).toBe("NQ-41");

    const saved = savedByPartner(shared(owner).bytes, [
      { do: "type", sheet: "Titrations", cell: address("Titre 1 mL"), value: 2.55 },
    ]);
    const book = opened(saved);
    const bench = "{2.55,2.5,2.45},{0.15},0.0998,10";
    const acid = answer(`TITRE.MEANACIDVALUE(${bench})`);
    const found = (heading: string) => valueIn(book, address(heading), "Titrations");
    near(
      found("Corrected titre mL"),
      answer("TITRE.CORRECTED({2.55,2.5,2.45},{0.15})"),
      "corrected",
    );
    near(found("Acid value mg KOH/g"), acid, "acid value");
    near(found("± FFA %"), answer(`TITRE.FFAUNCERTAINTY(${bench},0.05,0.01,0.5)`), "± FFA");
    // Another lot is as it was.
    const other = address("Acid value mg KOH/g").replace(String(line), String(line + 1));
    near(
      valueIn(book, other, "Titrations"),
      Number(valueIn(opened(owner), other, "Titrations")),
      other,
    );
    // 100 L of used cooking oil, 0.915 kg/L, goes by the new acid value.
    const batches = book.sheets.find(({ name }) => name === "Batches");
    const dose = answer(`TITRE.CATALYST(91.5,${String(acid)},"KOH",90,0.765)`);
    const doses = batches?.cells.filter(
      ({ value }) => typeof value === "number" && Math.abs(value / dose - 1) < 1e-12,
    );
    expect(doses).toHaveLength(1);

    expect(owner).toEqual(untouched);
    expect(cellIn(opened(owner), address("Corrected titre mL"), "Titrations")?.formula).toContain(
      "TITRE.CORRECTED(",
    );
  });

  it("gives every lot its own figures after the rows were sorted, and one was put in", () => {
    const owner = new Uint8Array(readFileSync(join(root, "sample-workbooks", "logbook.xlsx")));
    const copy = shared(owner).bytes;
    const table = opened(copy)
      .sheets.flatMap(({ tables }) => tables)
      .find(({ name }) => name === "Titrations");
    if (!table) throw new Error("no table of titrations");
    const { row, column, rows, columns } = table.area;
    const area = { row: row + 1, column, rows: rows - 1, columns };
    const by = table.columns.findIndex(({ heading }) => heading === "Lot");
    const figures = ["Corrected titre mL", "Acid value mg KOH/g", "± FFA %"].map((wanted) =>
      table.columns.findIndex(({ heading }) => heading === wanted),
    );
    /** The figures of each lot, by its name. */
    const byLot = (bytes: Uint8Array): ReadonlyMap<unknown, unknown[]> => {
      const cells = opened(bytes).sheets.find(({ name }) => name === "Titrations")?.cells ?? [];
      const at = (line: number, of: number) =>
        cells.find((cell) => cell.row === line && cell.column === column + of)?.value;
      const lines = Array.from({ length: rows + 1 }, (_, index) => row + 1 + index);
      return new Map(lines.map((line) => [at(line, by), figures.map((of) => at(line, of))]));
    };
    const before = byLot(copy);
    const after = byLot(
      savedByPartner(copy, [
        { do: "sort", sheet: "Titrations", area: areaName(area), by },
        { do: "insert-row", sheet: "Titrations", row: row + 3 },
        { do: "work-out-all" },
      ]),
    );
    const lots = [...before.keys()].filter((lot) => typeof lot === "string");
    expect(lots.length).toBeGreaterThan(8);
    for (const lot of lots) {
      for (const [at, figure] of (before.get(lot) ?? []).entries()) {
        const now = after.get(lot)?.[at];
        if (typeof figure === "number") near(now, figure, `${lot}, ${String(at)}`);
        else expect(now, lot).toEqual(figure);
      }
    }
  });

  it("of the logbook that the workbench opens has no formula left that calls an add-in", () => {
    const bytes = newXlsx(sampleLogbook());
    if (isFileProblem(bytes)) throw new Error(sayFile(bytes));
    const before = partsOf(bytes);
    const after = partsOf(shared(bytes).bytes);
    for (const [name, text] of Object.entries(after)) {
      expect(
        text.match(/<(?:f|calculatedColumnFormula|definedName)\b[^>]*>[^<]*_xldudf/g),
        name,
      ).toBe(null);
    }
    const own = /worksheets\/sheet|workbook\.xml|styles\.xml|Content_Types|tables\//;
    for (const [name, text] of Object.entries(before)) {
      if (!own.test(name)) expect(after[name], name).toBe(text);
    }
  });
});
