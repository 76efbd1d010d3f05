/** The formulas of a logbook's new columns, worked out by the embedded engine in both spellings. */
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { HeadlessWorkbook } from "../../src/workbench/engine/headless";
import { openHeadless } from "../../src/workbench/engine/node";
import { offers, type Spelling } from "../../src/adopt/added-columns/columns-to-add";
import { mappingFrom, withConstant } from "../../src/adopt/recognising/mapping";
import { withBasis } from "../../src/adopt/recognising/basis";
import { recogniseSheet } from "../../src/adopt/recognising/recognise";

const headings = [
  "Date",
  "Drum",
  "T1 ml",
  "T2 ml",
  "T3 ml",
  "Blank",
  "Sample g",
  "KOH N",
  "Oil in",
  "unit",
  "Base charge g/L",
];
const rows: readonly (readonly (string | number)[])[] = [
  [46_000, "NQ-1", 5.2, 5.3, 5.25, 0.25, 10.02, 0.1, 120, "l", 7],
  [46_003, "NQ-2", 4.1, 4.2, "", 0.2, 9.87, 0.0998, 30, "imp gal", 7],
  ["", "--- 2026 ---", "", "", "", "", "", "", "", "", ""],
  [46_006, "NQ-3", 2.1, 2.15, 2.05, "neutralised", 10.4, 0.0998, 90, "kg", 6.5],
];

/** A second implementation, in doubles; molar masses from the conventional atomic weights. */
function byHand(row: readonly (string | number)[]) {
  const titres = row.slice(2, 5).filter((each): each is number => typeof each === "number");
  const blank = typeof row[5] === "number" ? row[5] : 0;
  const [, , , , , , mass, molarity, amount, unit, charge] = row as number[];
  const net = titres.reduce((sum, each) => sum + each, 0) / titres.length - blank;
  const acidValue = (56.1 * Number(molarity) * net) / Number(mass);
  const inOne = { l: 0.915, "imp gal": 4.54609 * 0.915, kg: 1 }[String(unit)] ?? NaN;
  const kilograms = Number(amount) * inOne;
  const pure = ((kilograms * acidValue) / 56.1) * 56.1053 + (kilograms / 0.915) * Number(charge);
  const share = 1 - (acidValue * 282.468) / 56_100;
  return {
    correctedTitre: net,
    acidValue,
    ffa: (acidValue * 282) / 561,
    catalyst: pure / 0.9,
    methanol: (kilograms * share * 6 * 32.042) / 885.453 / 0.7914,
  } as const;
}

const cells = {
  sheet: "Log",
  row: 0,
  column: 0,
  values: [headings, ...rows],
  formulas: [headings, ...rows].map((row) => row.map(() => "")),
  formats: [headings, ...rows].map((_, at) =>
    headings.map((__, column) => (column === 0 && at > 0 ? "yyyy-mm-dd" : "General")),
  ),
};

function columnsIn(spelling: Spelling) {
  const [guess] = recogniseSheet(cells);
  if (!guess) throw new Error("no logbook");
  const mapping = withBasis(
    withConstant(withConstant(mappingFrom(guess), "base", "KOH"), "assay", "90"),
    "baseCharge",
    "pure",
  );
  const wanted = ["correctedTitre", "acidValue", "ffa", "catalyst", "methanol"];
  return offers(mapping, cells, spelling).filter(({ id }) => wanted.includes(id));
}

describe.each(["functions", "plain"] as const)("the new columns of a logbook as %s", (spelling) => {
  let workbook: HeadlessWorkbook;
  const added = columnsIn(spelling);
  beforeAll(async () => {
    workbook = await openHeadless({
      name: "Log",
      sheets: [
        {
          name: "Log",
          rows: cells.values.map((row, at) => [
            ...row.map((value) => ({ value })),
            ...added.map(({ heading, formula }) =>
              at === 0 ? { value: heading } : { formula: formula?.(at + 1) ?? "" },
            ),
          ]),
          columnWidths: [],
          tables: [],
          frozenRows: 1,
        },
      ],
    });
  }, 60_000);
  afterAll(() => {
    workbook.close();
  });

  it.each([0, 1, 3])("come to what a second implementation says, row %i", (at) => {
    const wanted = byHand(rows[at] ?? []);
    for (const [column, { id }] of added.entries()) {
      const value = workbook.value({ sheet: "Log", row: at + 1, column: headings.length + column });
      expect(Math.abs(Number(value) / wanted[id as keyof typeof wanted] - 1)).toBeLessThan(1e-12);
    }
  });

  it("stay empty in a row without readings", () => {
    for (const column of added.keys()) {
      expect(workbook.value({ sheet: "Log", row: 3, column: headings.length + column })).toBe("");
    }
  });
});
