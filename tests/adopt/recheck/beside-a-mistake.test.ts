/**
 * What is right beside a mistake of the same row, and a row that is none: of books nobody had looked at
 * these were accused.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { RoleId } from "../../../src/adopt/recognising/roles";
import type { Logbook } from "../../../src/adopt/recheck/recheck";
import { recheckAtOnce } from "../../../src/adopt/recheck/recheck";
import { times } from "../../thorough";
import { bareLogbook } from "./bare-logbook";
import { round } from "./rows";

const koh = 56.1053;
const accused = (books: readonly Logbook[]): RoleId[] =>
  recheckAtOnce(books).findings.map(({ role }) => role);

interface Batch {
  readonly titre: number;
  readonly litres: number;
  /** What the acid was taken for, times what it is. */
  readonly wrong: number;
}
const batch = (wrong: fc.Arbitrary<number>): fc.Arbitrary<Batch> =>
  fc
    .record({
      titre: fc.integer({ min: 200, max: 900 }),
      litres: fc.integer({ min: 40, max: 220 }),
      wrong,
    })
    .map((each) => ({ ...each, titre: each.titre / 100 }));

/** 10 g of oil and 0.1 mol/L: mg KOH/g for each mL above the blank. */
const perMillilitre = 0.561;

describe("the lye for the reaction, a charge in g/kg put down for a litre", () => {
  /** The same figure all the way down, by this maker's own density; the charge is of lye as it comes, 90 %. */
  const book = (batches: readonly Batch[], density: number): Logbook => {
    const rows = batches.map(({ titre, litres, wrong }) => {
      const ffa = round(titre * 0.282, 2);
      const acid = round(((ffa * 10) / 282) * koh * density * wrong, 3);
      const reaction = round(10 * density * 0.9, 3);
      const all = round(((acid + reaction) * litres) / 0.9, 1);
      return [ffa, litres, "KOH", 90, 10, acid, reaction, all];
    });
    const { mapping, cells } = bareLogbook(
      [
        ["ffa", "%"],
        ["oilAmount", "L"],
        ["base", undefined],
        ["assay", "%"],
        ["baseCharge", "g/kg"],
        ["acidDose", "g/L"],
        ["reactionDose", "g/L"],
        ["catalyst", "g"],
      ],
      rows,
    );
    const columns = mapping.columns.map((each) =>
      each.role === "baseCharge" ? { ...each, basis: "as weighed" as const } : each,
    );
    return { cells, mapping: { ...mapping, columns } };
  };

  it("is not accused of being copied, though it is the same in each row and the acid is wrong", () => {
    const right = fc.array(batch(fc.constant(1)), { minLength: 7, maxLength: 12 });
    const wrong = fc.array(batch(fc.constantFrom(2, 0.5, 2.4)), { minLength: 1, maxLength: 3 });
    fc.assert(
      fc.property(right, wrong, fc.constantFrom(0.88, 0.89, 0.9, 0.93), (ours, theirs, density) => {
        const roles = accused([book([...theirs, ...ours], density)]);
        expect(roles.length).toBeGreaterThan(0);
        expect(roles).not.toContain("reactionDose");
      }),
      { numRuns: times(30) },
    );
  });
});

describe("the lye for the reaction of a batch whose lot was titrated wrongly", () => {
  /** Of the same flake as the charge, and whether that is pure nobody says: it is not. */
  const books = (batches: readonly Batch[], assay: number): Logbook[] => {
    const values = batches.map(({ titre, wrong }) => round(titre * perMillilitre * wrong, 3));
    const log = bareLogbook(
      [
        ["lot", undefined],
        ["titre", "mL"],
        ["blank", "mL"],
        ["sampleMass", "g"],
        ["molarity", "mol/L"],
        ["acidValue", "mg KOH/g"],
      ],
      batches.map(({ titre }, at) => [
        `L${String(at)}`,
        round(titre + 0.2, 2),
        0.2,
        10,
        0.1,
        values[at] ?? 0,
      ]),
    );
    const second = bareLogbook(
      [
        ["lot", undefined],
        ["acidValue", "mg KOH/g"],
        ["oilAmount", "L"],
        ["base", undefined],
        ["assay", "%"],
        ["baseCharge", "%"],
        ["acidDose", "g"],
        ["reactionDose", "g"],
        ["catalyst", "g"],
      ],
      batches.map(({ litres }, at) => {
        const kilograms = 0.915 * litres;
        const acid = round(((values[at] ?? 0) / 56.1) * koh * kilograms, 1);
        const reaction = round((10 * kilograms * assay) / 100, 1);
        const all = round(((acid + reaction) * 100) / assay, 1);
        return [`L${String(at)}`, values[at] ?? 0, litres, "KOH", assay, 1, acid, reaction, all];
      }),
    );
    return [log, { ...second, mapping: { ...second.mapping, sheet: "Batches" } }];
  };

  it("is not accused, whatever the charge was", () => {
    fc.assert(
      fc.property(
        fc.array(batch(fc.constant(1)), { minLength: 1, maxLength: 8 }),
        fc.array(batch(fc.constantFrom(4, 1.37, 0.61)), { minLength: 1, maxLength: 2 }),
        fc.constantFrom(85, 90, 98.5, 99),
        (right, wrong, assay) => {
          const roles = accused(books([...right, ...wrong], assay));
          expect(roles).toContain("acidValue");
          expect(roles).not.toContain("reactionDose");
        },
      ),
      { numRuns: times(30) },
    );
  });
});

describe("totals typed without a word, below the rows", () => {
  it("are no row of the logbook, though an average is rounded to its last digit", () => {
    fc.assert(
      fc.property(
        fc.array(batch(fc.constant(1)), { minLength: 5, maxLength: 20 }),
        fc.integer({ min: 1, max: 3 }),
        (batches, places) => {
          const rows = batches.map(({ titre, litres }, at) => {
            const fraction = (titre * 0.282) / 100;
            const lye = round(((fraction * 10 * 100 * koh) / 282 + 7) * litres, 0);
            return [
              `L${String(at)}`,
              round(titre + 0.2, 2),
              0.2,
              10,
              0.1,
              round(fraction, 4),
              litres,
              lye,
            ];
          });
          const sum = (of: number): number =>
            rows.reduce((so, row) => so + Number(row[of] ?? 0), 0);
          const average = round(sum(5) / rows.length, places + 1);
          const totals = ["", "", "", "", "", average, sum(6), sum(7)];
          const book = bareLogbook(
            [
              ["lot", undefined],
              ["titre", "mL"],
              ["blank", "mL"],
              ["sampleMass", "g"],
              ["molarity", "mol/L"],
              ["ffa", "fraction"],
              ["oilAmount", "L"],
              ["catalyst", "g"],
            ],
            [...rows, totals],
          );
          const report = recheckAtOnce([book]);
          expect(report.rows).toBe(rows.length);
          const below = report.unchecked.filter((each) => each.rows.includes(rows.length + 1));
          expect(below).toEqual([]);
        },
      ),
      {
        numRuns: times(50),
        // by hand: their % FFA are on average 0.0165, a tie
        examples: [
          [
            [
              5.94, 6.87, 4.03, 3.85, 2.26, 2.08, 6.58, 3.99, 8.6, 5.59, 5.73, 6.37, 8.64, 8.25,
              7.47, 7.15,
            ].map((titre) => ({ titre, litres: 40, wrong: 1 })),
            2,
          ],
        ],
      },
    );
  });
});

describe("doses for a litre of an oil that is weighed", () => {
  it("are by a density of the maker's own, which nobody said, and not by the heat of the day", () => {
    const anyWarmth = fc.constantFrom(24, 37, 40, 41, 42, 55);
    // in most rows the same, so that the heat of the day nearly explains them
    const rows = anyWarmth.chain((usual) =>
      fc.array(
        fc.tuple(
          batch(fc.constant(1)),
          fc.oneof({ weight: 4, arbitrary: fc.constant(usual) }, anyWarmth),
        ),
        { minLength: 6, maxLength: 15 },
      ),
    );
    const densities = fc.integer({ min: 890, max: 925 }).map((thousandths) => thousandths / 1000);
    fc.assert(
      fc.property(rows, densities, (batches, density) => {
        const { mapping, cells } = bareLogbook(
          [
            ["titre", "mL"],
            ["blank", "mL"],
            ["sampleMass", "g"],
            ["molarity", "mol/L"],
            ["oilAmount", "kg"],
            ["temperature", "C"],
            ["base", undefined],
            ["assay", "%"],
            ["baseCharge", "%"],
            ["acidDose", "g/L"],
            ["reactionDose", "g/L"],
            ["catalyst", "g"],
          ],
          batches.map(([{ titre, litres: kilograms }, warm]) => {
            // 1 % of 85 % lye, in parts of pure base
            const acid = ((titre * perMillilitre) / 56.1) * koh * density;
            const reaction = 10 * density * 0.85;
            const all = ((acid + reaction) * kilograms) / density / 0.85;
            const net = round(titre + 0.2, 2);
            const doses = [round(acid, 3), round(reaction, 3), round(all, 1)];
            return [net, 0.2, 10, 0.1, kilograms, warm, "KOH", 85, 1, ...doses];
          }),
        );
        expect(accused([{ mapping, cells }])).toEqual([]);
      }),
      { numRuns: times(30) },
    );
  });
});
