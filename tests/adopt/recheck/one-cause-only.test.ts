/** What follows from a wrong figure of the row's lot is no mistake of its own, though a known one would give it too. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Logbook, recheckAtOnce } from "../../../src/adopt/recheck/recheck";
import { times } from "../../thorough";
import { bareLogbook } from "./bare-logbook";
import { round } from "./rows";

const koh = 56.1053;
/** 10 g of oil and 0.1 mol/L: % FFA for each mL above the blank. */
const ffaPerMillilitre = 0.282;
const assay = 90;

const onSheet = (book: Logbook, sheet: string): Logbook => ({
  ...book,
  mapping: { ...book.mapping, sheet },
});

interface Row {
  readonly titre: number;
  /** mL */
  readonly blank: number;
  readonly kilograms: number;
  /** The % FFA that is gone on with, and what the log holds of it. */
  readonly ffa: number;
  readonly held: number;
}

/** Titrations on one sheet, doses on another that names the lot and no acid; the doses for the acid are pure. */
function books(rows: readonly Row[]): Logbook[] {
  const log = bareLogbook(
    [
      ["lot", undefined],
      ["titre", "mL"],
      ["blank", "mL"],
      ["sampleMass", "g"],
      ["molarity", "mol/L"],
      ["ffa", "%"],
    ],
    rows.map(({ titre, blank, held }, at) => [`L${String(at)}`, titre, blank, 10, 0.1, held]),
  );
  const batches = bareLogbook(
    [
      ["lot", undefined],
      ["oilAmount", "kg"],
      ["base", undefined],
      ["assay", "%"],
      ["baseCharge", "%"],
      ["acidDose", "g"],
      ["reactionDose", "g"],
      ["catalyst", "g"],
    ],
    rows.map(({ kilograms, ffa }, at) => {
      const acid = (kilograms * 10 * ffa * koh) / 282;
      const reaction = kilograms * 10;
      const all = ((acid + reaction) * 100) / assay;
      const doses = [round(acid, 1), round(reaction, 1), round(all, 1)];
      return [`L${String(at)}`, kilograms, "KOH", assay, 1, ...doses];
    }),
  );
  const columns = batches.mapping.columns.map((each) =>
    each.role === "baseCharge" ? { ...each, basis: "pure" as const } : each,
  );
  const formulas = batches.cells.formulas.map((row, at) =>
    row.map((_, column) => {
      const line = String(at + 1);
      return at > 0 && column === row.length - 1 ? `=(F${line}+G${line})/(D${line}/100)` : "";
    }),
  );
  const second = {
    cells: { ...batches.cells, formulas },
    mapping: { ...batches.mapping, columns },
  };
  return [onSheet(log, "Log"), onSheet(second, "Batches")];
}

const right = (titre: number, kilograms: number): Row => {
  const ffa = (titre - 0.2) * ffaPerMillilitre;
  return { titre, blank: 0.2, kilograms, ffa, held: round(ffa, 2) };
};
const someRight = fc.array(
  fc.record({
    titre: fc.integer({ min: 200, max: 900 }),
    kilograms: fc.integer({ min: 40, max: 220 }),
  }),
  { minLength: 6, maxLength: 10 },
);

/** Findings that are no consequence of another row. */
const own = (all: readonly Logbook[]) =>
  recheckAtOnce(all)
    .findings.filter(({ fromRow }) => fromRow === undefined)
    .map(({ sheet, row }) => [sheet, row]);

describe("a batch that rests on a wrong titration in another table", () => {
  it("has no cause of its own where the log holds the slip in few digits", () => {
    fc.assert(
      fc.property(someRight, fc.integer({ min: 210, max: 500 }), (rows, hundredths) => {
        const plain = rows.map(({ titre, kilograms }) => right(titre / 100, kilograms));
        // ten times too little, and gone on with in all its digits
        const ffa = ((hundredths / 100 - 0.2) * ffaPerMillilitre) / 10;
        const slip = { ...right(hundredths / 100, 100), ffa, held: round(ffa, 2) };
        expect(own(books([...plain, slip]))).toEqual([["Log", plain.length + 1]]);
      }),
      { numRuns: times(40) },
    );
  });

  it("has none where the mistake does what its assay would do", () => {
    fc.assert(
      fc.property(someRight, fc.integer({ min: 300, max: 700 }), (rows, hundredths) => {
        const plain = rows.map(({ titre, kilograms }) => right(titre / 100, kilograms));
        // the blank is a nineteenth of the titre: added, not taken off, it makes 20 of 18 parts, as 90 % lye would
        const titre = hundredths / 100;
        const blank = titre / 19;
        const ffa = (titre + blank) * ffaPerMillilitre;
        const added = { titre, blank, kilograms: 100, ffa, held: round(ffa, 3) };
        expect(own(books([...plain, added]))).toEqual([["Log", plain.length + 1]]);
      }),
      { numRuns: times(40) },
    );
  });
});
