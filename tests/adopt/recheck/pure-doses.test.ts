/** A dose column is judged as what its heading says it is: pure base, or lye as it is weighed. */
import { describe, expect, it } from "vitest";
import fc from "fast-check";
import type { RoleId } from "../../../src/adopt/recognising/roles";
import { doseBasisOf } from "../../../src/adopt/recognising/basis";
import { recheckAtOnce } from "../../../src/adopt/recheck/recheck";
import { bareLogbook, typedConstants } from "./bare-logbook";

type Column = readonly [role: RoleId, unit: string | undefined, heading: string];

/** Lye of 85 %, 6.3 g/L of pure KOH, oil of 0.91 kg/L. */
function book(columns: readonly Column[], rows: readonly (readonly number[])[]) {
  const { mapping, cells } = bareLogbook(
    columns.map(([role, unit]) => [role, unit]),
    rows,
  );
  const constants = typedConstants([
    ["molarity", "0.1", "mol/L"],
    ["assay", "85", "%"],
    ["base", "KOH", undefined],
    ["density", "0.91", "kg/L"],
    ["baseCharge", "6.3", "g/L"],
  ]);
  return recheckAtOnce([
    {
      mapping: {
        ...mapping,
        columns: mapping.columns.map((each, at) => ({ ...each, heading: columns[at]?.[2] ?? "" })),
        constants,
      },
      cells,
    },
  ]);
}

const readings: readonly Column[] = [
  ["titre", "mL", "Titre mL"],
  ["blank", "mL", "Blank mL"],
  ["sampleMass", "g", "g oil"],
  ["oilAmount", "L", "Oil L"],
];

/** g of pure KOH for each litre: 0.1 mmol for each mL, 56.1053 g/mol, 0.91 kg for a litre. */
const rate = (net: number, grams: number): number => (net * 0.1 * 56.1053 * 0.91) / grams + 6.3;

const drawn = fc.array(
  fc.record({
    titre: fc.integer({ min: 120, max: 600 }).map((each) => each / 100),
    grams: fc.integer({ min: 95, max: 105 }).map((each) => each / 10),
    litres: fc.integer({ min: 20, max: 900 }),
  }),
  { minLength: 1, maxLength: 7 },
);

describe("a dose column whose heading says what it holds", () => {
  it.each([
    ["KOH pure g/L", true],
    ["KOH (pure) g/L", true],
    ["KOH g/L", true],
    ["KOH as weighed g/L", false],
    ["KOH 85 % pure g/L", false],
    ["g/L weighed", false],
  ])("%s: honest rows beside a weighed total are no mistake", (heading, isPure) => {
    fc.assert(
      fc.property(drawn, (rows) => {
        const columns: readonly Column[] = [
          ...readings,
          ["catalystRate", "g/L", heading],
          ["catalyst", "kg", "KOH kg weighed (85%)"],
        ];
        const held = rows.map(({ titre, grams, litres }) => {
          const pure = rate(titre - 0.1, grams);
          const own = isPure ? pure : pure / 0.85;
          return [titre, 0.1, grams, litres, Number(own.toFixed(3)), (pure * litres) / 850];
        });
        const { findings, checked } = book(columns, held);
        expect(findings).toEqual([]);
        expect(checked.dose).toBe(2 * rows.length);
      }),
      { numRuns: 30 },
    );
  });

  it.each(["NaOH pure g", "pure g"])(
    "%s alone, a total of pure base, is right as that",
    (heading) => {
      const pure = rate(2.4, 10) * 200;
      const columns: readonly Column[] = [...readings, ["catalyst", "g", heading]];
      expect(book(columns, [[2.5, 0.1, 10, 200, Math.round(pure)]]).findings).toEqual([]);
      // What would be weighed is more than the pure base.
      const [found] = book(columns, [[2.5, 0.1, 10, 200, Math.round(pure / 0.85)]]).findings;
      expect(found?.should).toBe(String(Math.round(pure)));
    },
  );

  it("a part that is said to be as weighed is wrong as pure base", () => {
    const columns: readonly Column[] = [
      ...readings,
      ["acidDose", "g", "for acid, as weighed"],
      ["catalyst", "g", "total, as weighed"],
    ];
    const acid = (rate(2.4, 10) - 6.3) * 200;
    const total = Math.round((rate(2.4, 10) * 200) / 0.85);
    const { findings } = book(columns, [
      [2.5, 0.1, 10, 200, Math.round(acid), total],
      [2.5, 0.1, 10, 200, Math.round(acid / 0.85), total],
    ]);
    expect(findings.map(({ row, mistake }) => [row, mistake])).toEqual([[1, "assay-not-applied"]]);
  });

  it("a weighed column beside a pure rate alone is held to what is weighed of it", () => {
    const columns: readonly Column[] = [
      ...readings,
      ["catalystRate", "g/L", "KOH pure g/L"],
      ["weighed", "g", "weighed out"],
    ];
    const own = rate(2.4, 10);
    const row = (weighed: number) => [
      2.5,
      0.1,
      10,
      200,
      Number(own.toFixed(3)),
      Math.round(weighed),
    ];
    const { findings } = book(columns, [row((own * 200) / 0.85), row(own * 200)]);
    expect(findings.map(({ row: at, mistake }) => [at, mistake])).toEqual([
      [2, "weighed-otherwise"],
    ]);
  });
});

describe("what a heading says of a dose", () => {
  it.each([
    ["KOH pure", "pure"],
    ["100 % pure KOH", "pure"],
    ["KOH, 90 % pure", "as weighed"],
    ["KOH weighed", "as weighed"],
    ["KOH g", undefined],
    ["purity", undefined],
  ])("%s", (heading, says) => {
    expect(doseBasisOf({ column: 0, heading, role: "catalyst", unit: "g" })).toBe(says);
  });
});
