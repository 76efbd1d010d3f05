import { describe, expect, it } from "vitest";
import { exact } from "../../../src/core/exact/exact";
import { omittedWords } from "../../../src/workbook/record/omitted-words";
import type { TitrationRecord } from "../../../src/workbook/record/titration-record";
import { rowValues } from "../../../src/workbook/tables/row-values";
import { titrations } from "../../../src/workbook/tables/titrations";
import { fourthOfMay2026, fryerLot } from "./records";

const values = (record: TitrationRecord): Record<string, unknown> =>
  Object.fromEntries(rowValues(titrations, record).map(({ heading, value }) => [heading, value]));

describe("a record as a row", () => {
  it("puts every figure under its heading, as a number", () => {
    expect(values(fryerLot)).toEqual({
      Date: fourthOfMay2026,
      Lot: "F-207",
      Stage: "as received",
      Oil: "used cooking oil",
      Operator: "Ines",
      "Titrant base": "KOH",
      "Molarity mol/L": 0.1,
      "Strength set by": "KHP",
      Indicator: "phenolphthalein",
      "Seconds held": 15,
      "Titre 1 mL": 2.4,
      "Titre 3 mL": 2.45,
      "Titre 4 mL": 2.4,
      "Blank 1 mL": 0.1,
      "Blank 2 mL": 0.15,
      "Mass g": 5.02,
      "Read to mL": 0.05,
      "Weighed to g": 0.01,
      "Titrant ± %": 0.5,
      Omitted: "Titre 2 = 2.90 mL: bubble",
    });
  });

  it("writes the word neutralised where the first blank would stand", () => {
    const row = values({ ...fryerLot, blanks: "neutralised" });
    expect(row["Blank 1 mL"]).toBe("neutralised");
    expect(row).not.toHaveProperty("Blank 2 mL");
  });

  it("keeps the record's figures of that day, and how the sample was taken", () => {
    const usual = { scatter: 0.0312, freedom: 20 };
    const row = values({ ...fryerLot, usual, burettePercent: exact("0.5"), isByVolume: true });
    expect([row["Usual scatter mL"], row["Usual freedom"]]).toEqual([0.0312, 20]);
    expect([row["Burette ± %"], row["Sample by"]]).toEqual([0.5, "by volume"]);
  });

  it("gives each titre its own mass, and no mass for all", () => {
    const row = values({ ...fryerLot, masses: [exact("5"), null, exact("5.1"), exact("4.98")] });
    expect(row).not.toHaveProperty("Mass g");
    expect(row).not.toHaveProperty("Own mass 2 g");
    expect([row["Own mass 1 g"], row["Own mass 3 g"], row["Own mass 4 g"]]).toEqual([5, 5.1, 4.98]);
  });

  it("uses only headings that the table has", () => {
    const headings = titrations.columns.map(({ heading }) => heading);
    const own = { ...fryerLot, masses: [exact("5")], note: "cloudy" };
    for (const record of [fryerLot, own]) {
      for (const { heading } of rowValues(titrations, record)) expect(headings).toContain(heading);
    }
  });

  it("says every omitted reading as finely as it was read", () => {
    const omitted = [
      { number: 2, titre: exact("2.9"), reason: " bubble " },
      { number: 4, titre: exact("3"), reason: "tap leaked" },
    ];
    expect(omittedWords(omitted, exact("0.05"))).toBe(
      "Titre 2 = 2.90 mL: bubble; Titre 4 = 3.00 mL: tap leaked",
    );
    expect(omittedWords(omitted, exact("0.005"))).toBe(
      "Titre 2 = 2.900 mL: bubble; Titre 4 = 3.000 mL: tap leaked",
    );
    expect(omittedWords([], undefined)).toBe("");
  });
});
