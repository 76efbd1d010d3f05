/** Headings and figures as makers write them: containers that are counted, points that part thousands, totals. */
import { describe, expect, it } from "vitest";
import { lacks } from "../../../src/adopt/recognising/lacks";
import { mappingFrom } from "../../../src/adopt/recognising/mapping";
import { openQuestions } from "../../../src/adopt/recognising/questions";
import { questionsOf } from "../../../src/adopt/recognising/questions";
import { recogniseSheet } from "../../../src/adopt/recognising/recognise";
import type { LogbookValue } from "../../../src/adopt/recognising/sheet-cells";
import { sureFrom } from "../../../src/adopt/recognising/sure";
import { numberFromText } from "../../../src/adopt/recognising/typed-number";
import { sheetOf } from "./sheet-of";

function understood(values: readonly (readonly LogbookValue[])[]) {
  const cells = sheetOf(values);
  const [guess] = recogniseSheet(cells);
  if (!guess) throw new Error("no table was found");
  return { cells, guess, mapping: mappingFrom(guess) };
}

const batches = (heading: string, amounts: readonly LogbookValue[]) =>
  understood([
    ["Batch", heading, "Acid number", "KOH g"],
    ...amounts.map((amount, at) => [`B${String(at)}`, amount, 2 + at / 10, 900 + 37 * at]),
  ]);

describe("a heading that counts containers", () => {
  it.each([
    ["IBC", "IBC"],
    ["Drums", "Drums"],
    ["Oil (drums)", "drums"],
    ["Oil, totes", "totes"],
  ])("%s is an amount, and one of them is asked about once", (heading, word) => {
    const { cells, guess, mapping } = batches(heading, [1, 0.5, 2, 1]);
    expect(guess.columns[1]?.role).toBe("oilAmount");
    const asked = questionsOf(mapping, cells).asked;
    expect(asked).toEqual([{ ask: "unit", word, rows: [1, 2, 3, 4] }]);
    expect(lacks(mapping, cells).map(({ sentence }) => sentence)).not.toContain(
      `In which unit is B: ${heading}?`,
    );
    expect(openQuestions(mapping, cells)).toBeGreaterThan(0);
  });

  it("with a number of its own for each is a lot", () => {
    expect(batches("Drum", [11, 12, 13, 14]).guess.columns[1]?.role).toBe("lot");
  });

  it("is not asked for a unit where each row says its own", () => {
    const { cells, mapping } = batches("Oil", ["1 drum", "2 drums", "1 IBC"]);
    expect(
      questionsOf(mapping, cells).asked.map((each) => each.ask === "unit" && each.word),
    ).toEqual(["drum", "IBC"]);
    expect(lacks(mapping, cells).map(({ sentence }) => sentence)).not.toContain(
      "In which unit is B: Oil?",
    );
  });
});

describe("headings that name the lye", () => {
  it.each([
    ["Base g/L pure", 7, "baseCharge"],
    ["NaOH base % of oil", 0.6, "baseCharge"],
    ["NaOH base g/L", 5, "baseCharge"],
    ["Titrant mol/L KOH", 0.1, "molarity"],
  ])("%s is no dose", (heading, figure, role) => {
    const { guess } = understood([
      ["Lot", "Titre mL", "Blank mL", "Sample g", heading, "Lye to add g"],
      ...[3.1, 4.2, 5.3, 2.2, 6.1].map((titre, at) => [
        `L${String(at)}`,
        titre,
        0.1,
        10,
        figure,
        900 + 41 * at,
      ]),
    ]);
    expect(guess.columns[4]?.role).toBe(role);
  });

  it("mL 0.1 N NaOH is a titre, whatever its strength", () => {
    const { guess } = understood([
      ["Batch", "mL 0.1 N NaOH", "Oil sample g", "FFA %"],
      ...[5, 7.1, 3.2, 6].map((titre, at) => [`U${String(at)}`, titre, 14.1, titre / 5]),
    ]);
    expect(guess.columns[1]?.role).toBe("titre");
  });
});

describe("a point between thousands", () => {
  it.each([
    ["10.207", "decimal" as const, 10_207],
    ["1.234.567", "decimal" as const, 1_234_567],
    ["1.118", "decimal" as const, 1118],
    ["0.915", "decimal" as const, 0.915],
    ["10.20", "decimal" as const, 10.2],
    ["10.207", "unsaid" as const, 10.207],
  ])("%s, where commas are %s, is %d", (text, commas, value) => {
    expect(numberFromText(text, commas)?.value).toBe(value);
  });
});

describe("totals", () => {
  const rows = [
    ["B1", 100, 3.1, 910],
    ["B2", 120, 4.2, 1180],
    ["B3", 80, 5.3, 860],
  ];
  it.each([
    ["with a word", ["Total", 300, "", 2950]],
    ["typed without a word", ["", 300, "", 2950]],
    ["averages without a word", ["", 100, "", 983]],
  ])("at the end, %s, are no row of the logbook", (_, totals) => {
    const { guess } = understood([["Batch", "Oil L", "FFA %", "Lye to add g"], ...rows, totals]);
    expect(guess.place.lastRow).toBe(3);
  });

  it("a row without a name that adds nothing up is one", () => {
    const own = ["", 310, 4, 2950];
    const { guess } = understood([["Batch", "Oil L", "FFA %", "Lye to add g"], ...rows, own]);
    expect(guess.place.lastRow).toBe(4);
  });
});

describe("methanol under a heading without a unit, beside oil in gallons", () => {
  const book = (methanol: readonly number[], oil: string) =>
    recogniseSheet(
      sheetOf([
        ["date", "batch", "oil acid % ffa", oil, "KOH needed (g)", "Methanol"],
        ...methanol.map((each, at) => [
          `1${String(at)}.3.2026`,
          at + 1,
          1.2 + at / 3,
          30 - at,
          1400 + 9 * at,
          each,
        ]),
      ]),
    )[0]?.columns.find(({ role }) => role === "methanol");

  it("is in the oil's gallons where only they make a fifth of it, in litres where only these do, and never sure", () => {
    // a fifth of 30 gallons is 6; of 30 imperial gallons, 136.4 L, it is 27 L
    for (const oil of ["charge imperial gal", "oil US gal"]) {
      const same = book([6, 5.8, 5.6, 5.4, 5.2], oil);
      expect(same?.unit).toBe(oil.includes("US") ? "US gal" : "imp gal");
      expect(same?.score).toBeLessThan(sureFrom);
    }
    const litres = book([27, 26, 25, 24.5, 23.6], "charge imperial gal");
    expect(litres?.unit).toBe("L");
    expect(litres?.score).toBeLessThan(sureFrom);
  });

  it("is in litres, and sure, beside oil in litres", () => {
    const found = book([6, 5.8, 5.6, 5.4, 5.2], "oil (L)");
    expect(found?.unit).toBe("L");
    expect(found?.score).toBeGreaterThanOrEqual(sureFrom);
  });
});
