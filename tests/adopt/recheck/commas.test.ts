/**
 * What a comma parts, by the book's own habit. Figures are written by Intl.NumberFormat, as programs in
 * Germany and in Britain write them; rows are worked out in rows.ts.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { withAnswer } from "../../../src/adopt/recognising/answers";
import { commaHabit } from "../../../src/adopt/recognising/comma-habit";
import { openQuestions, questionsOf } from "../../../src/adopt/recognising/questions";
import { recogniseSheet } from "../../../src/adopt/recognising/recognise";
import type { LogbookValue } from "../../../src/adopt/recognising/sheet-cells";
import { type Logbook, recheckAtOnce } from "../../../src/adopt/recheck/recheck";
import { sheetOf } from "../../taskpane/logbook/typed-pane";
import { times } from "../../thorough";
import { logbookOf, round, rowOf, usual, workRow } from "./rows";

const words = ["de-DE", "en-GB"] as const;
type Tongue = (typeof words)[number];

const written = (tongue: Tongue, value: number): string =>
  new Intl.NumberFormat(tongue, { maximumFractionDigits: 4 }).format(value);

/** Every figure of a book as text; its commas are learned from the figures. */
function asText({ mapping, cells }: Logbook, write: (value: number) => LogbookValue): Logbook {
  const values = cells.values.map((row, at) =>
    row.map((value) => (at > 0 && typeof value === "number" ? write(value) : value)),
  );
  const text = { ...cells, values };
  return { mapping: { ...mapping, commas: commaHabit([text]) }, cells: text };
}

const row = fc
  .record({
    titre: fc.integer({ min: 800, max: 9000 }).map((each) => each / 1000),
    mass: fc.integer({ min: 5000, max: 15000 }).map((each) => each / 1000),
    amount: fc.integer({ min: 1001, max: 5000 }),
  })
  .map(({ titre, mass, amount }) => ({
    ...usual,
    titres: [titre, round(titre + 0.03, 3)],
    mass,
    amount,
  }));

describe("a book whose figures say what its commas are", () => {
  it("is read as it was written, in either tongue, and nothing right is doubted", () => {
    fc.assert(
      fc.property(
        fc.array(row, { minLength: 4, maxLength: 9 }),
        fc.constantFrom(...words),
        (given, tongue) => {
          const book = logbookOf(given.map((each) => rowOf(each)));
          const report = recheckAtOnce([asText(book, (value) => written(tongue, value))]);
          const plain = recheckAtOnce([book]);
          expect(report.findings).toEqual([]);
          expect(report.unchecked).toEqual([]);
          expect(report.checked).toEqual(plain.checked);
        },
      ),
      { numRuns: times(25) },
    );
  });

  it.each([
    ["0,85", "1,250", 1.25],
    ["1.250,5", "1,250", 1.25],
    ["1,250.5", "1,250", 1250],
    ["2,500,000", "1,250", 1250],
    ["12.75 kg", "1,250", 1250],
  ])("with %s elsewhere, %s kg are %d", (elsewhere, figure, kilograms) => {
    const oil = [elsewhere, elsewhere, elsewhere, figure];
    const head: LogbookValue[][] = [["Batch", "Oil kg", "FFA %", "Lye to add g"]];
    const cells = sheetOf([...head, ...oil.map((each, at) => [`B${String(at)}`, each, 3, 900])]);
    const [guess] = recogniseSheet(cells);
    expect(guess?.commas).toBe(kilograms < 1000 ? "decimal" : "thousands");
  });

  it("lends its habit to a sheet that says nothing", () => {
    const head: LogbookValue[][] = [["Batch", "Oil kg", "FFA %", "Lye to add g"]];
    const mute = sheetOf([...head, ["B1", "1,250", 3, 900], ["B2", "1,310", 4, 950]]);
    const telling = sheetOf([...head, ["B1", "85,5", 3, 900], ["B2", "0,85", 4, 95]]);
    const book = commaHabit([mute, telling]);
    expect(recogniseSheet(mute)[0]?.commas).toBe("unsaid");
    expect(recogniseSheet(mute, book)[0]?.commas).toBe("decimal");
  });

  it("may say it by what cannot be: nobody reads a titre of 1250 mL", () => {
    const rows = ["1,250", "2,375", "1,905"].map((titre, at) => [`L${String(at)}`, titre, 10, 3]);
    const [guess] = recogniseSheet(sheetOf([["Lot", "Titre mL", "Sample g", "FFA %"], ...rows]));
    expect(guess?.commas).toBe("decimal");
  });
});

describe("a book that gives no sign", () => {
  const only = (value: number, isOil: boolean): LogbookValue =>
    isOil ? written("en-GB", value) : value;
  /** Only the oil is text; its lye is worked out from that many kilograms for each that is read. */
  function mute(amounts: readonly number[], factor: number, isDosed: boolean): Logbook {
    const rows = amounts.map((amount) => {
      const given = { ...usual, unit: "kg" as const };
      const held = rowOf({ ...given, amount: amount * factor });
      const right = workRow({ ...given, amount: amount * factor });
      return [
        ...held.slice(0, 11),
        only(amount, true),
        "kg",
        ...held.slice(13, -2),
        "",
        isDosed ? round(right.total, 3) : "",
      ];
    });
    return logbookOf(rows, ["oilMass", "acidDose"]);
  }
  const amounts = fc.array(fc.integer({ min: 1001, max: 9999 }), { minLength: 3, maxLength: 6 });

  it("is judged by the arithmetic where one reading alone gives the lye", () => {
    fc.assert(
      fc.property(amounts, fc.boolean(), (oil, isThousands) => {
        const book = mute(oil, isThousands ? 1 : 0.001, true);
        expect(questionsOf(book.mapping, book.cells).asked).toEqual([]);
        const report = recheckAtOnce([book]);
        expect(report.findings).toEqual([]);
        expect(report.checked.dose).toBe(oil.length);
      }),
      { numRuns: times(20) },
    );
  });

  it("is asked about once where neither or both readings fit, and read as answered", () => {
    fc.assert(
      fc.property(amounts, fc.boolean(), (oil, isThousands) => {
        // a lye of its own for each row, which follows from nothing
        const { mapping, cells } = mute(oil, 0.06, true);
        const { asked } = questionsOf(mapping, cells);
        expect(asked.map(({ ask }) => ask)).toEqual(["commas"]);
        const open = openQuestions(mapping, cells);
        expect(recheckAtOnce([{ mapping, cells }]).checked.dose).toBe(0);
        const means = isThousands ? ("thousands" as const) : ("decimal" as const);
        const answered = withAnswer(mapping, { ask: "commas", means });
        expect(openQuestions(answered, cells)).toBe(open - 1);
        const { unchecked } = recheckAtOnce([{ mapping: answered, cells }]);
        expect(unchecked.some(({ why }) => why.includes("comma"))).toBe(false);
        expect(withAnswer(answered, { ask: "commas", means: "unsaid" }).answers).toEqual([]);
      }),
      { numRuns: times(10) },
    );
  });

  it("says of a row that is not checked that its comma may be either", () => {
    const { unchecked } = recheckAtOnce([mute([1250, 1310, 2480], 0.06, true)]);
    expect(unchecked.map(({ why }) => why).join("; ")).toContain(
      "whose comma may part decimals or thousands",
    );
  });
});
