import { describe, expect, it } from "vitest";
import { exact } from "../../../src/core/exact/exact";
import { isProblem } from "../../../src/core/problem/problem";
import { dosesOf } from "../../../src/workbook/what-if/doses";
import { formatOf, placesFor } from "../../../src/workbook/what-if/format";
import { layout } from "../../../src/workbook/what-if/layout";
import { columnHead, columnName, tableName } from "../../../src/workbook/what-if/names";
import { oneFormula } from "../../../src/workbook/what-if/one-formula";
import { byHand, column, doses, question, type QuestionGiven } from "./questions";

const formulasOf = (given: QuestionGiven, origin = { row: 0, column: 0 }) => {
  const asked = question(given);
  return layout(asked, doses(asked), origin);
};

describe("the doses of a what-if table", () => {
  it("are those of the hand arithmetic, in litres, gallons, pounds and kilograms", () => {
    // 0.915 kg/L; 231 cubic inches; 4.54609 L; 0.45359237 kg
    const kilograms = {
      l: 0.915,
      us_gal: 3.785411784 * 0.915,
      uk_gal: 4.54609 * 0.915,
      lb: 0.45359237,
      kg: 1,
    };
    for (const [unit, each] of Object.entries(kilograms)) {
      const { rows } = doses(
        question({ unit, sizes: [1, 250], columns: [{ acid: 2 }, { acid: 5 }] }),
      );
      for (const [at, size] of [1, 250].entries()) {
        for (const [across, acid] of [2, 5].entries()) {
          const dose = rows[at]?.[across];
          const wanted = byHand(size * each, acid);
          expect(dose && !isProblem(dose) && Math.abs(dose.toNumber() / wanted - 1)).toBeLessThan(
            1e-12,
          );
        }
      }
    }
  });

  it("take each base with its own assay and charge", () => {
    const { rows } = doses(
      question({
        unit: "kg",
        sizes: [100],
        by: "base",
        columns: [
          { base: "KOH", assay: 90, charge: 0.765 },
          { base: "NaOH", assay: 98, charge: 0.546 },
        ],
      }),
    );
    const figures = rows[0]?.map((dose) => (isProblem(dose) ? 0 : dose.toNumber())) ?? [];
    expect(figures[0]).toBeCloseTo(byHand(100, 5), 8);
    expect(figures[1]).toBeCloseTo(byHand(100, 5, "NaOH", 98, 0.546), 8);
  });

  it("give way to a refusal in the columns above the limit alone", () => {
    // 10 mg KOH/g is 10 x 282 / 561 = 5.03 % as oleic
    const { rows } = doses(question({ columns: [{ acid: 9.9 }, { acid: 10 }] }));
    expect(rows.map((row) => row.map(isProblem))).toEqual([
      [false, true],
      [false, true],
    ]);
  });

  it("are refused whole for a solid fat by volume, and for more oil than is reckoned with", () => {
    expect(dosesOf(question({ oil: "tallow" }))).toMatchObject({ fields: { code: "solid-fat" } });
    expect(isProblem(dosesOf(question({ oil: "tallow", unit: "kg" })))).toBe(false);
    expect(isProblem(dosesOf(question({ oil: "tallow", temperature: 50 })))).toBe(false);
    expect(dosesOf(question({ unit: "us_gal", sizes: [1_000_000] }))).toMatchObject({
      fields: { code: "too-much-oil" },
    });
  });

  it("count warm oil as lighter", () => {
    const warm = doses(question({ sizes: [100], temperature: 40 })).masses[0]?.toNumber();
    // 0.915 - 20 x 0.00066 = 0.9018 kg/L
    expect(warm).toBeCloseTo(90.18, 10);
  });
});

describe("the what-if table as cells", () => {
  it("is one formula with mixed references, for every dose and for every mass", () => {
    const { rows } = formulasOf({ columns: [{ acid: 2 }, { acid: 5 }, { acid: 7 }] });
    const texts = rows.map((row) => row.map((cell) => cell?.formula ?? cell?.value ?? ""));
    const body = texts.slice(-2);
    // inputs in A4 to A10, acid values in row 12, sizes from row 15 on
    expect(body).toEqual([
      [
        100,
        "=TITRE.OILMASS($A15,$A$4,$A$5,$A$6)",
        "=TITRE.CATALYST($B15,C$12,$A$7,$A$8,$A$9,$A$10)",
        "=TITRE.CATALYST($B15,D$12,$A$7,$A$8,$A$9,$A$10)",
        "=TITRE.CATALYST($B15,E$12,$A$7,$A$8,$A$9,$A$10)",
      ],
      [
        200,
        "=TITRE.OILMASS($A16,$A$4,$A$5,$A$6)",
        "=TITRE.CATALYST($B16,C$12,$A$7,$A$8,$A$9,$A$10)",
        "=TITRE.CATALYST($B16,D$12,$A$7,$A$8,$A$9,$A$10)",
        "=TITRE.CATALYST($B16,E$12,$A$7,$A$8,$A$9,$A$10)",
      ],
    ]);
    expect(texts.slice(3, 10).map(([figure, label]) => [figure, label])).toEqual([
      ["l", "Unit of the batch sizes: l, ml, us_gal, uk_gal, g, kg or lb"],
      ["used cooking oil", "Oil, or its density at 20 C, kg/L"],
      [20, "Oil temperature, C"],
      ["KOH", "Base, of the lye"],
      [90, "Assay, % of lye"],
      [0.765, "Charge, % of oil, pure"],
      [5, "Allowed acid, % FFA as oleic"],
    ]);
    expect(texts.slice(11, 14)).toEqual([
      ["Acid value", "mg KOH/g", 2, 5, 7],
      [
        "FFA",
        "% as oleic",
        "=TITRE.FFAFROMACIDVALUE(C$12)",
        "=TITRE.FFAFROMACIDVALUE(D$12)",
        "=TITRE.FFAFROMACIDVALUE(E$12)",
      ],
      ['="Batch size, "&$A$4', "Oil, kg", "Catalyst, g", "Catalyst, g", "Catalyst, g"],
    ]);
  });

  it("moves its references with its first cell", () => {
    const { rows } = formulasOf({ sizes: [10], columns: [{ acid: 2 }] }, { row: 5, column: 3 });
    expect(rows.at(-1)?.map((cell) => cell?.formula)).toEqual([
      undefined,
      "=TITRE.OILMASS($D20,$D$9,$D$10,$D$11)",
      "=TITRE.CATALYST($E20,F$17,$D$12,$D$13,$D$14,$D$15)",
    ]);
  });

  it("puts what is compared across, whichever it is, and the rest above", () => {
    const dose = (given: QuestionGiven) => formulasOf(given).rows.at(-1)?.[2]?.formula;
    const sizes = [10];
    // acid value A7, its % FFA A8, then what is not compared
    expect(dose({ sizes, by: "assay", columns: [{ assay: 85 }, { assay: 90 }] })).toBe(
      "=TITRE.CATALYST($B15,$A$7,$A$9,C$13,$A$10,$A$11)",
    );
    expect(dose({ sizes, by: "charge", columns: [{ charge: 0.5 }, { charge: 1 }] })).toBe(
      "=TITRE.CATALYST($B15,$A$7,$A$9,$A$10,C$13,$A$11)",
    );
    expect(dose({ sizes, by: "base", columns: [{ base: "KOH" }, { base: "NaOH" }] })).toBe(
      "=TITRE.CATALYST($B15,$A$7,C$11,C$12,C$13,$A$9)",
    );
  });

  it("follows a recorded lot by the lot's name in a cell of its own", () => {
    const { rows } = formulasOf({ sizes: [10], columns: [{ acid: 5, lot: "NQ-44" }, { acid: 2 }] });
    const texts = rows.map((row) => row.map((cell) => cell?.formula ?? cell?.value ?? ""));
    expect(texts[11]?.slice(2)).toEqual(["NQ-44", ""]);
    expect(texts[12]?.slice(2)).toEqual([
      "=LOOKUP(2,1/(Titrations[Lot]=C$12),Titrations[Acid value mg KOH/g])",
      2,
    ]);
  });

  it("says above the doses which lot is used although its readings are apart, once, and stays whole", () => {
    const why = "lot K: The two lie 0.50 mL apart.";
    const doubtful = { acid: 5, lot: "K", usedAllTheSame: why };
    const { rows } = formulasOf({ sizes: [10], columns: [doubtful, doubtful, { acid: 2 }] });
    const texts = rows.map((row) => row.map((cell) => cell?.formula ?? cell?.value ?? ""));
    expect(texts.flat().filter((text) => String(text).includes(why))).toEqual([
      `Used all the same: ${why}`,
    ]);
    // one row further down than without it: unit to limit in A5 to A11, acid values in row 14
    expect(texts[3]?.[0]).toBe(`Used all the same: ${why}`);
    expect(texts.at(-1)?.[2]).toBe("=TITRE.CATALYST($B17,C$14,$A$8,$A$9,$A$10,$A$11)");
    expect(texts[13]?.slice(2)).toContain(2);
  });

  it("gives a name to every cell", () => {
    const names = formulasOf({ by: "base" }).rows.flatMap((row) =>
      row.flatMap((cell) => (cell ? [cell.name] : [])),
    );
    expect(names.every((name) => name.length > 2)).toBe(true);
  });
});

describe("the figures of a what-if table", () => {
  it("are shown with three digits of the smallest", () => {
    const places = (...figures: number[]) => placesFor(figures.map((each) => exact(each)));
    expect([places(1286, 100), places(12.9), places(1.29), places(0.129), places()]).toEqual([
      0, 1, 2, 3, 0,
    ]);
    expect([formatOf(0), formatOf(2)]).toEqual(["0", "0.00"]);
  });

  it("are named with their units", () => {
    expect(columnName("acid", column({ acid: 5.6 }))).toBe("5.6 mg KOH/g");
    // of a mix: as acid values are shown elsewhere, never to six digits
    expect(columnName("acid", column({ acid: 5.27158 }))).toBe("5.27 mg KOH/g");
    expect(columnHead("acid", column({ acid: 5.27158 }))).toBe("5.27");
    expect(columnHead("acid", column({ acid: 0.875 }))).toBe("0.875");
    expect(columnName("acid", column({ lot: 12 }))).toBe("lot 12");
    expect(columnName("assay", column({ assay: 85 }))).toBe("85 % assay");
    expect(columnName("base", column({ base: "NaOCH3" }))).toBe("NaOCH3");
    expect(tableName(question({ sizes: [1], columns: [{ acid: 2 }, { acid: 3 }] }))).toBe(
      "1 batch size by 2 acid values",
    );
  });
});

describe("one formula instead of a table", () => {
  it("says the same as WHATIF takes it", () => {
    expect(oneFormula(question())).toMatchObject({
      formula: '=TITRE.WHATIF({100;200},"l",{2,5},"KOH",90,0.765,"used cooking oil",5)',
      rows: 3,
      columns: 3,
    });
  });

  it("is not offered where it would say something else", () => {
    const why = (given: QuestionGiven): string => {
      const found = oneFormula(question(given));
      return found.kind === "not-offered" ? found.why : "";
    };
    expect(why({ by: "assay" })).toContain("acid values alone");
    expect(why({ columns: [{ acid: 5, lot: "NQ-44" }] })).toContain("typed acid values");
    expect(why({ temperature: 40 })).toContain("20 C");
    expect(why({ temperature: 40, unit: "kg" })).toBe("");
    const many = Array.from({ length: 2000 }, (_, at) => 100_000 + at);
    expect(why({ sizes: many })).toContain("so many");
  });
});
