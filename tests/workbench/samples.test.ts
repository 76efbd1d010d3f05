/** The workbooks in sample-workbooks/: made anew they are the same, and what stands in them is right. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { makeSamples } from "../../src/cli/samples/all";
import { root } from "../rules/sources-of";
import { formulaIn, opened, sheetIn, valueIn } from "../xlsx/answers";
import { partsOf } from "../xlsx/files";

const folder = join(root, "sample-workbooks");
const files = readdirSync(folder).filter((name) => name.endsWith(".xlsx"));
/** The old logbook is home-made, mistakes and all: it keeps to no rules of ours. */
const ours = files.filter((file) => file !== "old-logbook.xlsx");
const bytesOf = (file: string): Uint8Array => new Uint8Array(readFileSync(join(folder, file)));
const bookOf = (file: string) => opened(bytesOf(file));

const volatile = /\b(?:NOW|TODAY|RAND|RANDBETWEEN|RANDARRAY|OFFSET|INDIRECT|CELL|INFO)\s*\(/i;

describe("the sample workbooks", () => {
  let made: ReadonlyMap<string, Uint8Array>;
  beforeAll(async () => {
    made = await makeSamples();
  }, 300_000);

  it("are those that npm run samples makes, and no others", () => {
    expect([...made.keys()].sort()).toEqual([...files].sort());
  });

  it.each(files)("made anew, %s is the same byte for byte", (file) => {
    expect(Buffer.compare(made.get(file) ?? Buffer.alloc(0), bytesOf(file))).toBe(0);
  });
});

describe.each(ours)("%s", (file) => {
  const book = bookOf(file);
  const parts = partsOf(bytesOf(file));
  const formulas = book.sheets.flatMap(({ cells }) => cells.filter((cell) => cell.formula));

  it("has a result for every formula", () => {
    expect(formulas.length).toBeGreaterThan(0);
    expect(formulas.filter(({ value }) => value === undefined)).toEqual([]);
  });

  it("has nothing volatile, and says which engine worked it out", () => {
    expect(formulas.filter(({ formula = "" }) => volatile.test(formula))).toEqual([]);
    expect(parts["xl/workbook.xml"]).toMatch(/<calcPr [^>]*calcId="191029"/);
  });

  it("begins with a sheet that tells a newcomer what to do, and with the cautions", () => {
    const [first] = book.sheets;
    const texts = first?.cells.map(({ value }) => value) ?? [];
    expect(first?.name).toBe("Start here");
    expect(texts).toContain("What to do");
    expect(texts).toContainEqual(expect.stringContaining("A result is not a permission."));
  });

  it("prints every sheet on its long side", () => {
    for (const { part, name } of book.sheets) {
      expect(parts[part], name).toMatch(/<pageSetup [^>]*orientation="landscape"/);
    }
  });

  it("keeps the heads of its tables in view and repeats them in print", () => {
    for (const { name, tables, frozenRows } of book.sheets) {
      for (const { area } of tables) {
        expect(frozenRows, name).toBe(area.row + 1);
        const row = String(area.row + 1);
        expect(parts["xl/workbook.xml"]).toContain(`'${name}'!$${row}:$${row}</definedName>`);
      }
    }
  });

  it("says beside every column of its tables what stands there, and on what is typed what to type", () => {
    for (const { name, tables, notes, part } of book.sheets) {
      for (const { area, columns } of tables) {
        const heads = notes.filter(({ row }) => row === area.row);
        expect(heads, name).toHaveLength(columns.length);
        const prompts = parts[part]?.match(/<dataValidation [^>]*prompt="/g) ?? [];
        expect(prompts.length, name).toBeGreaterThan(columns.length / 3);
      }
    }
  });
});

describe("formulas of the add-in", () => {
  it.each(ours.filter((file) => file !== "partner-logbook.xlsx"))(
    "stand in %s as files hold them, and no program is asked to work them out on opening",
    (file) => {
      const parts = partsOf(bytesOf(file));
      expect(parts["xl/workbook.xml"]).toContain('<calcPr calcId="191029"/>');
      const texts = Object.values(parts).flatMap((text) => text.match(/<f\b[^>]*>[^<]*/g) ?? []);
      expect(texts.some((text) => text.includes("_xldudf_TITRE_"))).toBe(true);
      expect(texts.filter((text) => /TITRE\./.test(text))).toEqual([]);
    },
  );

  it("are none in the partner's copy", () => {
    const parts = Object.values(partsOf(bytesOf("partner-logbook.xlsx")));
    expect(parts.filter((text) => /<f\b[^>]*>[^<]*TITRE/.test(text))).toEqual([]);
  });
});

describe("figures in the sample workbooks", () => {
  it("what-if.xlsx: 100 L at an acid value of 1 takes 879.45 g of lye, 90 % KOH", () => {
    // 91.5 kg x 1 / 56.1 x 56.1053 = 91.50864 g; 7 g/L x 100 L = 700 g; (91.50864 + 700) / 0.9
    const book = bookOf("what-if.xlsx");
    const { cells } = sheetIn(book, "What if");
    const row = cells.find(({ column, value }) => column === 0 && value === 100)?.row ?? -2;
    expect(valueIn(book, `C${String(row + 1)}`, "What if")).toBeCloseTo(879.454, 3);
  });

  it("checks.xlsx: all checks agree, and each is worked out by a formula", () => {
    const book = bookOf("checks.xlsx");
    const { cells } = sheetIn(book, "Checks");
    const agreeing = cells.filter(({ column, value }) => column === 7 && value === "agrees");
    expect(agreeing).toHaveLength(45);
    expect(valueIn(book, "A2", "Checks")).toBe("In agreement: 45 of 45");
    for (const { row } of agreeing) {
      expect(formulaIn(book, `G${String(row + 1)}`, "Checks"), String(row)).toMatch(/^=/);
    }
  });

  it("logbook.xlsx: lot NQ-41 holds 1.2877 mg KOH/g", () => {
    // (2.40 + 2.50 + 2.45) / 3 - 0.15 = 2.30 mL; 56.1 x 0.0998 x 2.30 / 10
    const book = bookOf("logbook.xlsx");
    const { tables } = sheetIn(book, "Titrations");
    const headings = tables[0]?.columns.map(({ heading }) => heading) ?? [];
    const column = headings.indexOf("Acid value mg KOH/g");
    const found = sheetIn(book, "Titrations").cells.find(
      (cell) => cell.row === 3 && cell.column === column,
    );
    expect(found?.value).toBeCloseTo(1.2877194, 7);
  });
});
