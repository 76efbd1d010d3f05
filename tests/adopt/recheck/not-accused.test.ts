/** Rows that are no mistakes of their own: totals below a table, batches that follow a wrong titration. */
import { describe, expect, it } from "vitest";
import { recheckAtOnce } from "../../../src/adopt/recheck/recheck";
import { bareLogbook } from "./bare-logbook";
import { logbookOf, rowOf, usual } from "./rows";

describe("a row of totals directly below the table", () => {
  const rows = [rowOf(usual), rowOf({ ...usual, amount: 90 }), rowOf({ ...usual, amount: 60 })];
  const totals = (label: string) =>
    rowOf(usual).map((_, at) =>
      at === 0 ? label : at === 9 ? 2.7 : at === 11 ? 270 : at === 18 ? 2841 : "",
    );

  it.each(["Total", "Totals", "Sum", "Average"])("is no row where it says %s", (label) => {
    const report = recheckAtOnce([logbookOf([...rows, totals(label)])]);
    expect(report.rows).toBe(3);
    expect(report.findings).toEqual([]);
  });

  it("is no row where its formulas add up the rows above", () => {
    const sums = logbookOf([...rows, totals("")], [], [[3, "catalyst", "=SUM(S2:S4)"]]);
    expect(recheckAtOnce([sums])).toMatchObject({ rows: 3, findings: [] });
  });
});

describe("a blank taken off twice", () => {
  it("is named where the net titre has it off already", () => {
    // By hand: net 5.00667 mL less 0.25 once more, 0.1 mol/L, 10.4 g: 56.1 x 0.1 x 4.75667 / 10.4.
    const row = rowOf(usual);
    row[10 - 1] = 2.57;
    const found = recheckAtOnce([logbookOf([row], ["ffa", "acidDose", "catalyst"])]).findings;
    expect(found.map(({ mistake, role }) => [mistake, role])).toEqual([
      ["blank-twice", "acidValue"],
    ]);
  });
});

describe("a batch that copied its lot's wrong acid value", () => {
  const titrations = bareLogbook(
    [
      ["lot", undefined],
      ["titre", "mL"],
      ["blank", "mL"],
      ["sampleMass", "g"],
      ["molarity", "mol/L"],
      ["acidValue", "mg KOH/g"],
    ],
    // 56.1 x 0.1 x 5 / 10 is 2.805; the blank was left in.
    [
      ["A", 5.25, 0.25, 10, 0.1, 2.95],
      ["B", 4.25, 0.25, 10, 0.1, 2.24],
    ],
  );
  const batches = bareLogbook(
    [
      ["lot", undefined],
      ["acidValue", "mg KOH/g"],
      ["oilAmount", "kg"],
      ["base", undefined],
      ["assay", "%"],
      ["acidDose", "g"],
    ],
    // 100 kg x 2.95 g/kg / 0.9, pure base for 1 mg KOH/g being 1.0001 g/kg.
    [
      ["A", 2.95, 100, "KOH", 90, 327.8],
      ["B", 2.24, 100, "KOH", 90, 248.9],
    ],
  );

  it("follows from the lot, and is not accused by itself", () => {
    const found = recheckAtOnce([
      titrations,
      { ...batches, mapping: { ...batches.mapping, sheet: "Batches" } },
    ]).findings;
    expect(found.map(({ sheet, row, mistake, fromRow }) => [sheet, row, mistake, fromRow])).toEqual(
      [
        ["Log", 1, "blank-not-subtracted", undefined],
        ["Batches", 1, "blank-not-subtracted", 2],
      ],
    );
  });
});

it("a row's verdict does not hang on the rows above it", () => {
  const odd = rowOf(usual, {}, { blank: 0, assay: 1 });
  // One in three is right: a column that hardly ever agrees would be asked about as a whole.
  const above = Array.from({ length: 180 }, (_, at) =>
    at % 3 === 0 ? rowOf(usual) : rowOf(usual, { total: { factor: 1.3 + at / 1000 } }),
  );
  const alone = recheckAtOnce([logbookOf([...above.slice(0, 1), odd])]).findings.filter(
    ({ row }) => row === 2,
  );
  const below = recheckAtOnce([logbookOf([...above, odd])]).findings.filter(
    ({ row }) => row === 181,
  );
  expect(below.map(({ mistake }) => mistake)).toEqual(alone.map(({ mistake }) => mistake));
});
