import { describe, expect, it } from "vitest";
import type { MistakeId } from "../../../src/adopt/recheck/mistakes/all";
import { recheckAtOnce } from "../../../src/adopt/recheck/recheck";
import type { RoleId } from "../../../src/adopt/recognising/roles";
import {
  columnLetter,
  type Given,
  logbookOf,
  round,
  rowOf,
  usual,
  workRow,
  type Wrong,
} from "./rows";

const titrations: readonly RoleId[] = [
  "meanTitre",
  "correctedTitre",
  "acidValue",
  "ffa",
  "oilMass",
  "acidDose",
];
const gap: Given = { ...usual, titres: [5.2, undefined, 5.25] };
const imperial: Given = { ...usual, unit: "uk_gal", amount: 30 };

/** Each mistake in the column in which it is made, with all results in the sheet. */
const inOneColumn: readonly (readonly [MistakeId, RoleId, Given, string, Wrong])[] = [
  ["empty-as-zero", "meanTitre", gap, "mean", { zeros: true }],
  ["blank-not-subtracted", "correctedTitre", usual, "net", { blank: 0 }],
  ["blank-added", "correctedTitre", usual, "net", { blank: -1 }],
  ["other-acid", "ffa", usual, "ffa", { acid: 256 }],
  ["other-acid", "ffa", usual, "ffa", { acid: 200 }],
  ["density-as-one", "oilMass", usual, "kilograms", { density: 1 }],
  ["other-gallon", "oilMass", imperial, "kilograms", { gallon: 3.785411784 }],
  ["acid-by-charge", "acidDose", usual, "acidDose", { byCharge: true }],
  ["other-base", "acidDose", usual, "acidDose", { base: 39.99676928 }],
  ["percent-as-fraction", "acidDose", usual, "acidDose", { scale: 100 }],
  ["percent-as-fraction", "acidDose", usual, "acidDose", { scale: 0.01 }],
  ["assay-not-applied", "catalyst", usual, "total", { assay: 1 }],
  ["assay-multiplied", "catalyst", usual, "total", { assay: 1 / 0.9 }],
  ["acid-left-out", "catalyst", usual, "total", { noAcid: true }],
];

describe("a mistake in one column", () => {
  it.each(inOneColumn)(
    "%s is found and named in the column %s",
    (mistake, role, given, step, wrong) => {
      const report = recheckAtOnce([logbookOf([rowOf(given, { [step]: wrong })])]);
      expect(report.findings.map((each) => [each.mistake, each.role])).toEqual([[mistake, role]]);
    },
  );
});

/** The same when the row holds nothing but its readings and the dose it came to. */
const inTheDose: readonly (readonly [MistakeId, Given, Wrong])[] = [
  ["empty-as-zero", gap, { zeros: true }],
  ["blank-not-subtracted", usual, { blank: 0 }],
  ["blank-added", usual, { blank: -1 }],
  ["density-as-one", { ...usual, charge: 7.3 }, { density: 1 }],
  ["other-gallon", imperial, { gallon: 3.785411784 }],
  ["acid-by-charge", usual, { byCharge: true }],
  ["acid-left-out", usual, { noAcid: true }],
  ["other-base", usual, { base: 39.99676928 }],
  ["percent-as-fraction", usual, { scale: 100 }],
  ["assay-not-applied", usual, { assay: 1 }],
  ["assay-multiplied", usual, { assay: 1 / 0.9 }],
];

describe("a mistake on the way to the one dose a row holds", () => {
  it.each(inTheDose)("%s is named", (mistake, given, wrong) => {
    const report = recheckAtOnce([logbookOf([rowOf(given, {}, wrong)], titrations)]);
    expect(report.findings.map((each) => each.mistake)).toEqual([mistake]);
  });

  it("two mistakes are named together", () => {
    const wrong = { blank: 0, assay: 1 } as const;
    const report = recheckAtOnce([logbookOf([rowOf(usual, {}, wrong)], titrations)]);
    expect(report.findings.map(({ mistake, also }) => [mistake, also])).toEqual([
      ["assay-not-applied", "blank-not-subtracted"],
    ]);
  });

  it("a figure that nothing explains is said to be so", () => {
    const report = recheckAtOnce([logbookOf([rowOf(usual, {}, { factor: 1.31 })], titrations)]);
    expect(report.findings.map((each) => each.mistake)).toEqual(["not-recognised"]);
  });
});

describe("what the mistake does", () => {
  it("is counted in grams and in acid left over: FFA fraction times base charge", () => {
    const [found] = recheckAtOnce([
      logbookOf([rowOf(usual, {}, { byCharge: true })], titrations),
    ]).findings;
    // By hand, in exact fractions: net titre 5.006667 mL, acid value 2.700712, 109.8 kg: 5.28588 mol of
    // acid, 296.566 g of KOH. The rule gives 1.357577 % of 840 g = 11.4036 g. Short of 285.162 g pure,
    // 316.85 g of 90 %, 5.08264 mol: 96.155 % of the acid. The sheet's dose is rounded to 1 g.
    const by = found?.effect;
    expect(Math.abs((by?.grams ?? 0) + 316.85)).toBeLessThan(0.6);
    expect(Math.abs((by?.acidLeftMoles ?? 0) - 5.0826)).toBeLessThan(0.01);
    expect(Math.abs((by?.acidLeftPercent ?? 0) - 96.155)).toBeLessThan(0.2);
    expect(found?.should).toBe(String(round(workRow(usual).total, 0)));
  });

  it("is nothing at the vessel when the figure is not what the dose rests on", () => {
    const [found] = recheckAtOnce([logbookOf([rowOf(usual, { ffa: { acid: 256 } })])]).findings;
    expect(Math.abs(found?.effect?.grams ?? 9)).toBeLessThan(1);
  });
});

describe("no false alarm", () => {
  it("is raised by a right row, whatever its digits", () => {
    const lots = Array.from({ length: 200 }, (_, at) => ({
      ...usual,
      titres: [3 + at / 37, 3.1 + at / 37, undefined].map((each) => each && round(each, 2)),
      amount: 60 + at,
    }));
    for (const without of [
      [],
      ["acidValue"],
      ["ffa", "meanTitre"],
      ["correctedTitre", "meanTitre"],
      titrations,
    ] as RoleId[][]) {
      expect(
        recheckAtOnce([
          logbookOf(
            lots.map((each) => rowOf(each)),
            without,
          ),
        ]).findings,
      ).toEqual([]);
    }
  });

  it("is raised by the other constants of the trade", () => {
    const row = rowOf(usual);
    const { acidValue, ffa, kilograms } = workRow(usual);
    const at = (role: RoleId): number => columnLetter(role).charCodeAt(0) - 65;
    row[at("acidValue")] = (acidValue * 56.11) / 56.1;
    row[at("ffa")] = (ffa * 282.468) / 282;
    row[at("oilMass")] = (kilograms * 0.918) / 0.915;
    expect(recheckAtOnce([logbookOf([row])]).findings).toEqual([]);
  });

  it("is raised by what only the hidden digits of a formula show", () => {
    const small: Given = { ...usual, blank: 0.004 };
    const row = rowOf(small);
    const at = columnLetter("acidValue").charCodeAt(0) - 65;
    row[at] = workRow(small, { blank: 0 }).acidValue;
    const book = logbookOf([row], ["correctedTitre", "meanTitre"], [[0, "acidValue", "=1"]], {
      acidValue: "0.0",
    });
    expect(recheckAtOnce([book]).findings).toEqual([]);
  });
});

describe("formulas", () => {
  const c = columnLetter;
  it("that would go wrong when a cell is empty are told, though all figures are right", () => {
    const sum = `=(${c("titre")}2+${c("titre", 1)}2+${c("titre", 2)}2)/3`;
    const report = recheckAtOnce([
      logbookOf(
        [rowOf(usual), rowOf(usual)],
        [],
        [
          [0, "meanTitre", sum],
          [1, "meanTitre", sum.replace(/2(?=[+)])/g, "3")],
        ],
      ),
    ]);
    expect(report.findings).toEqual([]);
    expect(report.latent).toMatchObject([{ mistake: "empty-as-zero", rows: 2, formula: sum }]);
  });

  it("are shown beside the mistake that they make", () => {
    const formula = `=${c("ffa")}2/100*${c("baseCharge")}2*${c("oilAmount")}2`;
    const report = recheckAtOnce([
      logbookOf([rowOf(usual, { acidDose: { byCharge: true } })], [], [[0, "acidDose", formula]]),
    ]);
    expect(report.findings).toMatchObject([{ mistake: "acid-by-charge", formula }]);
  });
});
