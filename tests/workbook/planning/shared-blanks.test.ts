import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { quantity } from "../../../src/core/quantity/quantity";
import { usualFreedom, usualScatter } from "../../../src/core/record/usual-scatter";
import type { RecordedTitration } from "../../../src/workbook/planning/read-titrations";
import { withSharedBlanks } from "../../../src/workbook/planning/shared-blanks";

const row = (
  day: number | undefined,
  titres: readonly number[],
  blanks: readonly number[],
  molarity = 0.1,
): RecordedTitration => ({
  day,
  lot: "NQ-1",
  titres: titres.map((each) => quantity("mL", each)),
  blanks: blanks.map((each) => quantity("mL", each)),
  samples: undefined,
  molarity: quantity("mol/L", molarity),
  titreStep: quantity("mL", 0.05),
});

const shares = (rows: readonly RecordedTitration[]): boolean[] =>
  withSharedBlanks(rows).map(({ sharesBlanks }) => sharesBlanks === true);

describe("blanks that serve several lots of a day", () => {
  it("are told once, by the first row that has them; those of another day, titrant or reading are others", () => {
    const rows = [
      row(46000, [2.5, 2.55], [0.8, 0.85]),
      row(46000, [4], [0.8, 0.85]),
      row(46000, [4], [0.85, 0.8]),
      row(46001, [4], [0.8, 0.85]),
      row(46000, [4], [0.8, 0.85], 0.05),
      row(undefined, [4], [0.8, 0.85]),
      row(undefined, [4], [0.8, 0.85]),
      row(46000, [4], []),
      row(46000, [4], []),
      row(46000, [4], [0.8, 0.85]),
    ];
    const [no, yes] = [false, true];
    expect(shares(rows)).toEqual([no, yes, no, no, no, no, no, no, no, yes]);
  });

  it("leave the usual scatter and its freedom what they are when each lot is told with its titres alone", () => {
    const reading = fc.integer({ min: 40, max: 90 }).map((drops) => drops / 20);
    const few = fc.array(reading, { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(
        fc.array(few, { minLength: 1, maxLength: 5 }),
        fc.constantFrom([0.8, 0.9], [0.5, 0.5, 0.7]),
        (lots, blanks) => {
          const day = withSharedBlanks(lots.map((titres) => row(46000, titres, blanks)));
          // as paper has it: the blanks once, then the titres of each lot
          const [first = [], ...others] = lots;
          const once = [row(46000, first, blanks), ...others.map((each) => row(46000, each, []))];
          expect(usualFreedom(day)).toBe(usualFreedom(once));
          const step = quantity("mL", 0.0001);
          expect(usualScatter(day, step)).toBeCloseTo(Number(usualScatter(once, step)), 12);
        },
      ),
    );
  });
});
