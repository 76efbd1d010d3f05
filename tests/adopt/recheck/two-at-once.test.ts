/** Two mistakes in a row: in one figure, in two beside each other, and beside a dose that nobody can check. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { RoleId } from "../../../src/adopt/recognising/roles";
import type { Finding } from "../../../src/adopt/recheck/reporting/finding";
import { recheckAtOnce } from "../../../src/adopt/recheck/recheck";
import { times } from "../../thorough";
import { type Given, logbookOf, round, rowOf, usual, workRow, type Wrong } from "./rows";

/** Only what a titration comes to. */
const titrationAlone: readonly RoleId[] = [
  "meanTitre",
  "correctedTitre",
  "oilAmount",
  "amountUnit",
  "oilMass",
  "base",
  "assay",
  "baseCharge",
  "acidDose",
  "catalyst",
];

type Row = ReturnType<typeof rowOf>;
const acidValueAt = 9;
const ffaAt = 10;
const catalystAt = 18;
const put = (row: Row, at: number, value: number): Row =>
  row.map((each, place) => (place === at ? value : each));

const named = ({ role, mistake, also }: Finding): string =>
  `${role}: ${[mistake, ...(also === undefined ? [] : [also])].sort().join(" and ")}`;

/** Is it said to be these, for sure or as one of several that give it to its digits? */
const isNamed =
  (role: RoleId, ...ids: readonly string[]) =>
  (finding: Finding): boolean => {
    const { mistake, also, orElse = [] } = finding;
    const own = also === undefined ? [mistake] : [mistake, also];
    const key = [...ids].sort().join();
    return (
      finding.role === role && [own, ...orElse].some((each) => [...each].sort().join() === key)
    );
  };

/** Of a figure written in fewer digits so much may be meant that what rests on it cannot be called wrong. */
const isTold = (figure: number): boolean => String(figure).replace(".", "").length > 2;

const titration: fc.Arbitrary<Given> = fc
  .record({
    first: fc.integer({ min: 180, max: 900 }),
    more: fc.integer({ min: 2, max: 9 }),
    mass: fc.integer({ min: 80, max: 120 }),
    blank: fc.integer({ min: 20, max: 40 }),
  })
  .map(({ first, more, mass, blank }) => ({
    ...usual,
    titres: [first / 100, undefined, (first + more) / 100],
    mass: mass / 10,
    blank: blank / 100,
  }));

const ways = [
  ["blank-not-subtracted", { blank: 0 }],
  ["blank-added", { blank: -1 }],
  ["empty-as-zero", { zeros: true }],
] as const satisfies readonly (readonly [string, Wrong])[];

/** No one mistake, and no convention, gives nearly the same figure by chance. */
function isTelling(value: number, given: Given, of: "acidValue" | "ffa"): boolean {
  const nets: readonly Wrong[] = [{}, ...ways.map(([, wrong]) => wrong), { zeros: true, blank: 0 }];
  const twice = workRow({ ...given, blank: 2 * given.blank });
  const single = [...nets.map((wrong) => workRow(given, wrong)), twice].map((row) => row[of]);
  const scales = [1, 10, 100, 0.1, 0.01, 256 / 282, 200 / 282, 338 / 282, 561 / 282];
  return single.every((each, at) =>
    (at === 0 ? scales : [1]).every((scale) => Math.abs(value / (each * scale) - 1) > 0.02),
  );
}

describe("an acid value with two mistakes at once", () => {
  it("is named for both: one of the titre, and a decimal point", () => {
    fc.assert(
      fc.property(
        titration,
        fc.constantFrom(...ways),
        fc.constantFrom(10, 100, 0.1),
        (given, [id, wrong], factor) => {
          const acidValue = workRow(given, wrong).acidValue * factor;
          fc.pre(isTelling(acidValue, given, "acidValue"));
          const row = put(rowOf(given), acidValueAt, round(acidValue, 4));
          const { findings } = recheckAtOnce([logbookOf([row], titrationAlone)]);
          expect(findings.map(({ role }) => role)).toEqual(["acidValue"]);
          expect(findings.some(isNamed("acidValue", id, "decimal-slip"))).toBe(true);
        },
      ),
      { numRuns: times(40) },
    );
  });
});

describe("a % FFA with a mistake of its own beside a wrong acid value", () => {
  // g/mol, as acids are reported: palmitic, lauric, erucic
  it("is named, and so is the acid value", () => {
    fc.assert(
      fc.property(
        titration,
        fc.constantFrom(...ways),
        fc.constantFrom(256, 200, 338),
        (given, [id, wrong], molarMass) => {
          const { acidValue } = workRow(given, wrong);
          fc.pre(isTelling((acidValue * molarMass) / 561, given, "ffa"));
          const shown = round(acidValue, 4);
          const wrongAcid = put(rowOf(given), acidValueAt, shown);
          const ffa = round((acidValue * molarMass) / 561, 4);
          const row = put(wrongAcid, ffaAt, ffa);
          const { findings } = recheckAtOnce([logbookOf([row], titrationAlone)]);
          expect(findings.some(isNamed("acidValue", id))).toBe(true);
          // of either in two digits so much may be meant that it is called nothing
          const isClear = isTold(shown) && isTold(ffa);
          expect(findings.some(isNamed("ffa", "other-acid"))).toBe(
            isClear || findings.length === 2,
          );
        },
      ),
      // an acid value of 2.0000 stands as 2, which several mistakes give
      {
        numRuns: times(40),
        examples: [
          [{ ...usual, titres: [6.06, undefined, 6.13], blank: 0.32, mass: 10.5 }, ways[2], 256],
          [{ ...usual, titres: [1.88, undefined, 1.97], blank: 0.36, mass: 11.7 }, ways[1], 256],
        ],
      },
    );
  });
});

describe("a dose column that follows from its readings in hardly any row", () => {
  /** Grams that follow from nothing; one acid value has a blank too many. */
  const book = (doses: readonly number[], isWeighed: boolean) => {
    const rows = doses.map((dose, at) => {
      const row = put(rowOf({ ...usual, amount: 100 + 7 * at }), catalystAt, dose);
      return at === 0
        ? put(row, acidValueAt, round(workRow(usual, { blank: 0 }).acidValue, 2))
        : row;
    });
    const { mapping, cells } = logbookOf(rows, ["meanTitre", "correctedTitre", "acidDose"]);
    if (!isWeighed) return { mapping, cells };
    // the scale's own column: nothing says which of both is wrong
    const column = cells.values[0]?.length ?? 0;
    const wide = <T>(given: readonly (readonly T[])[], last: (at: number) => T) =>
      given.map((row, at) => [...row, last(at)]);
    return {
      mapping: {
        ...mapping,
        place: { ...mapping.place, lastColumn: column },
        columns: [
          ...mapping.columns,
          { column, heading: "weighed", role: "weighed" as const, unit: "g" },
        ],
      },
      cells: {
        ...cells,
        values: wide(cells.values, (at) => (at === 0 ? "weighed" : (doses[at - 1] ?? 0) + 400)),
        formulas: wide(cells.formulas, () => ""),
        formats: wide(cells.formats, () => "General"),
      },
    };
  };
  const doses = fc
    .array(fc.integer({ min: 20, max: 300 }), { minLength: 6, maxLength: 12 })
    .map((all) => all.map((each, at) => each * 11 + (at % 5) * 137));

  it("gives its grams to no other mistake, and is counted as not checked", () => {
    fc.assert(
      fc.property(doses, fc.boolean(), (all, isWeighed) => {
        const report = recheckAtOnce([book(all, isWeighed)]);
        fc.pre(report.unchecked.some(({ why }) => why.includes("hardly any row")));
        expect(report.checked.dose).toBe(0);
        expect(report.findings.map(named)).toEqual(["acidValue: blank-not-subtracted"]);
        const [found] = report.findings;
        expect(found?.dose).toBe("unchecked");
        // by hand: 0.25 mL too many, 25 umol of acid for 10.4 g in 109.8 kg of 0.915 kg/L and 100 L, 91.5 kg:
        // 0.21995 mol, 12.34 g of KOH, 13.71 g of 90 %
        expect(Math.abs((found?.effect?.grams ?? 0) - 13.71)).toBeLessThan(0.02);
      }),
      { numRuns: times(8) },
    );
  });
});
