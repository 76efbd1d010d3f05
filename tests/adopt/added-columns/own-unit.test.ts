import { describe, expect, it } from "vitest";
import { offers } from "../../../src/adopt/added-columns/columns-to-add";
import { unitAlone } from "../../../src/adopt/recognising/heading";
import { mappingFrom, withColumn } from "../../../src/adopt/recognising/mapping";
import { recogniseSheet } from "../../../src/adopt/recognising/recognise";
import { amountUnits } from "../../../src/core/quantity/units";
import { bareLogbook } from "../recheck/bare-logbook";
import { sheetOf } from "../recognising/sheet-of";

/** A small logbook with columns of lye and methanol of its own; what is added to it takes their units. */
function added(lye: string, methanol: string) {
  const values = [
    ["Date", "Drum", "T1 ml", "Blank ml", "Sample g", "KOH N", "Oil (l)", lye, methanol],
    [46_000, "NQ-1", 5.2, 0.25, 10, 0.1, 120, 3, 24],
    [46_003, "NQ-2", 4.1, 0.25, 10, 0.1, 100, 2, 20],
    [46_006, "NQ-3", 3.1, 0.25, 10, 0.1, 100, 2, 21],
  ];
  const cells = sheetOf(values);
  const [guess] = recogniseSheet(cells);
  if (!guess) throw new Error("no table was found");
  const mapping = withColumn(withColumn(mappingFrom(guess), 7, "catalyst"), 8, "methanol");
  return offers(mapping, cells, "functions").map(({ heading }) => heading);
}

describe("a column that is added", () => {
  it.each([
    ["KOH total (lb)", "Lye to weigh, lb"],
    ["KOH total (oz)", "Lye to weigh, oz"],
    ["KOH total (kg)", "Lye to weigh, kg"],
  ])("of lye stands in the unit of %s", (own, heading) => {
    expect(added(own, "Methanol (L)")).toContain(heading);
  });

  it.each([
    ["Methanol (US gal)", "Methanol to add, US gal"],
    ["Methanol (mL)", "Methanol to add, mL"],
  ])("of methanol stands in the unit of %s", (own, heading) => {
    expect(added("KOH total (g)", own)).toContain(heading);
  });

  it("of methanol is in litres where theirs is weighed: a litre of it is no kilogram", () => {
    expect(added("KOH total (g)", "Methanol (kg)")).toContain("Methanol to add, L");
  });
});

describe("a column that cannot be worked out", () => {
  it("says that titres counted in drops are lacking in mL", () => {
    const { mapping, cells } = bareLogbook(
      [
        ["titre", "drop"],
        ["sampleMass", "g"],
        ["molarity", "mol/L"],
        ["ffa", "%"],
      ],
      [[48, 10, 0.1, 0.68]],
    );
    for (const spelling of ["functions", "plain"] as const) {
      const [corrected] = offers(mapping, cells, spelling);
      expect(corrected?.lacks).toBe("the titres and blanks in mL: they stand in another unit");
    }
  });

  it("says the same of a mean titre in drops, and starts from no acid value that may be wrong", () => {
    const { mapping, cells } = bareLogbook(
      [
        ["meanTitre", "drop"],
        ["sampleMass", "g"],
        ["molarity", "mol/L"],
        ["acidValue", "mg KOH/g"],
        ["ffa", "%"],
      ],
      [[48, 10, 0.1, 1.35, 0.68]],
    );
    for (const spelling of ["functions", "plain"] as const)
      for (const id of ["acidValue", "ffa"] as const)
        expect(offers(mapping, cells, spelling).find((each) => each.id === id)?.lacks).toBe(
          "the titres and blanks in mL: they stand in another unit",
        );
  });

  it("says that titres stand together in one cell, or a lot's in several rows", () => {
    const head = ["Lot", "Titre mL", "Blank mL", "Sample g", "KOH mol/L", "Acid value"];
    const lackOf = (rows: readonly (readonly (string | number)[])[]): string[] => {
      const cells = sheetOf([head, ...rows]);
      const [guess] = recogniseSheet(cells);
      if (!guess) throw new Error("no table was found");
      return (["functions", "plain"] as const).map(
        (spelling) =>
          offers(mappingFrom(guess), cells, spelling).find(({ id }) => id === "ffa")?.lacks ?? "",
      );
    };
    const together = "each titre in a cell of its own: several stand in one";
    expect(
      lackOf([
        ["NQ-1", "2.40 / 2.44", 0.1, 10, 0.1, 1.3],
        ["NQ-2", "3.10 / 3.14", 0.1, 10, 0.1, 1.7],
        ["NQ-3", "1.90 / 1.94", 0.1, 10, 0.1, 1.02],
      ]),
    ).toEqual([together, together]);
    const apart = "the titres of a lot side by side in one row: they stand in several rows";
    expect(
      lackOf([
        ["NQ-1", 2.4, 0.1, 10, 0.1, 1.3],
        ["", 2.44, "", "", "", ""],
        ["NQ-2", 3.1, 0.1, 10, 0.1, 1.7],
        ["", 3.14, "", "", "", ""],
      ]),
    ).toEqual([apart, apart]);
  });

  it("says what is lacking where masses are not one for each titre, side by side and numbered alike", () => {
    const lackOf = (headings: readonly string[]): string[] => {
      const values = [headings, ...[1, 2, 3].map((row) => headings.map((_, at) => row + at / 10))];
      const cells = sheetOf(values);
      const columns = headings.map((heading, column) => ({
        column,
        heading,
        role: heading.startsWith("Titre") ? ("titre" as const) : ("sampleMass" as const),
        unit: heading.startsWith("Titre") ? "mL" : "g",
      }));
      const { mapping } = bareLogbook([["molarity", "mol/L"]], [[0.1], [0.1], [0.1]]);
      const molarity = {
        role: "molarity" as const,
        unit: "mol/L",
        from: { kind: "typed" as const, value: "0.1" },
      };
      const all = { ...mapping, columns, constants: [molarity] };
      return (["functions", "plain"] as const).map(
        (spelling) =>
          offers(all, cells, spelling).find(({ id }) => id === "acidValue")?.lacks ?? "none",
      );
    };
    const why =
      "one sample mass for all titres, or one for each, numbered as they are and in columns side by side";
    expect(lackOf(["Titre 1", "Titre 2", "Sample 1", "Sample 2"])).toEqual(["", ""]);
    expect(lackOf(["Titre 1", "Titre 2", "Sample"])).toEqual(["", ""]);
    expect(lackOf(["Titre 1", "Titre 2", "Titre 3", "Sample 1", "Sample 2"])).toEqual([why, why]);
    expect(lackOf(["Titre 1", "Titre 2", "Sample 2", "Sample 1"])).toEqual([why, why]);
    expect(lackOf(["Titre 1", "Titre 2", "Sample 1"])).toEqual([why, why]);
    expect(lackOf(["Titre 1", "Titre 2", "Sample", "Flask"])).toEqual([why, why]);
  });

  it("is empty in a row without % FFA where that is held as a fraction: a hundred times nothing is a figure", () => {
    const { mapping, cells } = bareLogbook([["ffa", "fraction"]], [[0.02], [0.03]]);
    for (const spelling of ["functions", "plain"] as const) {
      const value = offers(mapping, cells, spelling).find(({ id }) => id === "acidValue");
      expect(value?.formula?.(2)).toContain('=IF(COUNT(A2)=0,"",');
    }
  });
});

describe("a unit of an amount", () => {
  it.each(amountUnits.map(({ inHeadings }) => inHeadings))("%s is read in a heading", (unit) => {
    expect(unitAlone(unit)).toBe(unit);
  });
});
