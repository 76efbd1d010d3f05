import { describe, expect, it } from "vitest";
import type { CellContent } from "../../../src/sheet/port";
import { sampleLogbook } from "../../../src/workbook/sample/logbook";
import { titrants } from "../../../src/workbook/tables/titrants";
import { type Entry, tableSheet } from "../../../src/workbook/tables/sheet";
import { cells } from "../../host/contract-parts";
import { openMemory } from "../../host/open-memory";

const place = (heading: string): number =>
  titrants.columns.findIndex((column) => column.heading === heading);

/** What the calculated columns of a row show. */
async function shown(entry: Entry): Promise<{ strength: unknown; percent: unknown }> {
  const host = openMemory({ name: "a book", sheets: [tableSheet(titrants, [entry])] });
  const block = { sheet: "Titrants", row: 3, column: 0, rows: 1, columns: titrants.columns.length };
  const [row = []] = (await cells(host, block)).values;
  const at = (heading: string): CellContent | undefined => row[place(heading)];
  return { strength: at("Strength mol/L"), percent: at("± %") };
}

const twoOfThem = {
  Date: 46_300,
  Titrant: "K-5",
  Base: "KOH",
  "KHP 1 g": 0.51,
  "KHP 2 g": 0.51,
  "Titre 1 mL": 25.05,
  "Titre 2 mL": 25.05,
  "Blank mL": 0.05,
  "Weighed to g": 0.01,
  "Read to mL": 0.05,
} as const;

const without = (...headings: readonly string[]): Entry =>
  Object.fromEntries(Object.entries(twoOfThem).filter(([heading]) => !headings.includes(heading)));

describe("a row of Titrants", () => {
  it("works strength and ± out of its KHP readings", async () => {
    const { strength, percent } = await shown(twoOfThem);
    // By hand: 1000 x 0.51 / (204.2223 x 25.00).
    expect(strength).toBeCloseTo(510 / (204.2223 * 25), 12);
    // By hand: u^2 = 0.05^2/6 + 0.05^2/6 over 25^2, 0.01^2/(6 x 2 x 0.51^2), 0.05^2/3 in percent; no scatter.
    const relative = (2 * 0.05 ** 2) / 6 / 25 ** 2 + 0.01 ** 2 / (6 * 2 * 0.51 ** 2);
    const expected = 1.959963984540054 * 100 * Math.sqrt(relative + 0.0005 ** 2 / 3);
    expect(percent).toBeCloseTo(expected, 9);
  });

  it("counts the purity of the KHP, and a blank that was neutralised", async () => {
    const entry = { ...twoOfThem, "Blank mL": "neutralised", "KHP purity %": 99.5 };
    // By hand: nothing is taken off the titre.
    const wanted = (510 * 0.995) / (204.2223 * 25.05);
    expect((await shown(entry)).strength).toBeCloseTo(wanted, 12);
  });

  it("shows what is stated where there are no KHP readings, and nothing where nothing is", async () => {
    const stated = { Date: 46_300, Titrant: "K-6", "Stated mol/L": 0.1003, "Stated ± %": 1 };
    expect(await shown(stated)).toEqual({ strength: 0.1003, percent: 1 });
    expect(await shown({})).toEqual({ strength: "", percent: "" });
  });

  it("keeps the stated ± with one KHP titration, which has no scatter", async () => {
    const one = without("KHP 2 g", "Titre 2 mL");
    expect((await shown({ ...one, "Stated ± %": 1.5 })).percent).toBe(1.5);
    expect((await shown(one)).percent).toBe("");
  });

  it("shows #N/A for a mass without its titre, and for a blank that is not filled in", async () => {
    const halved = without("Titre 2 mL");
    expect((await shown(halved)).strength).toEqual({ error: "#N/A" });
    const unblanked = without("Blank mL");
    expect((await shown(unblanked)).strength).toEqual({ error: "#N/A" });
  });
});

describe("the titrants of the sample", () => {
  it("are eight checks of one bottle that slowly weakens, and a fresh bottle", async () => {
    const host = openMemory(sampleLogbook());
    const block = { sheet: "Titrants", row: 3, column: 0, rows: 9, columns: 19 };
    const { values } = await cells(host, block);
    const strengths = values.map((row) => Number(row[place("Strength mol/L")]));
    // By hand, first and last check: 1000 x sum of g / (204.2223 x sum of net mL).
    expect(strengths[0]).toBeCloseTo(1535 / (204.2223 * (74.95 - 0.15)), 12);
    expect(strengths[7]).toBeCloseTo(1525 / (204.2223 * (75.05 - 0.15)), 12);
    expect(strengths[8]).toBe(0.1003);
  });
});
