import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isProblem } from "../../../src/core/problem/problem";
import { say } from "../../../src/core/problem/wording";
import { quantity } from "../../../src/core/quantity/quantity";
import {
  type PastTitration,
  usualFreedom,
  usualScatter,
} from "../../../src/core/record/usual-scatter";

const mL = (value: number) => quantity("mL", value);

interface Plain {
  titres: number[];
  blanks: number[];
  masses?: number[];
}

const titration = ({ titres, blanks, masses }: Plain): PastTitration => ({
  titres: titres.map(mL),
  blanks: blanks.map(mL),
  samples: masses?.map((mass, place) => [mL(titres[place] ?? 0), quantity("g", mass)]),
});

/** So fine a graduation is no floor, where no reading differs from another. */
const scatter = (rows: readonly Plain[], step = 1e-12): number => {
  const found = usualScatter(rows.map(titration), mL(step));
  if (isProblem(found)) throw new Error(say(found));
  return found;
};
const freedom = (rows: readonly Plain[]): number => Number(usualFreedom(rows.map(titration)));

/** Squares about the mean from the differences of all pairs: no mean is taken. */
function byPairs(values: readonly number[]): number {
  let sum = 0;
  for (const [place, a] of values.entries()) {
    for (const b of values.slice(place + 1)) sum += (a - b) ** 2;
  }
  return sum / values.length;
}

const reading = fc.integer({ min: 100, max: 900 }).map((n) => n / 100);
const row = fc.record({
  titres: fc.array(reading, { minLength: 1, maxLength: 5 }),
  blanks: fc.array(
    fc.integer({ min: 1, max: 90 }).map((n) => n / 100),
    { maxLength: 3 },
  ),
});
const rows = fc.array(row, { minLength: 1, maxLength: 6 });

describe("the usual scatter of a record", () => {
  it("is what the differences of all pairs make it", () => {
    fc.assert(
      fc.property(rows, (record) => {
        const sets = record.flatMap(({ titres, blanks }) => [titres, blanks]);
        const nu = sets.reduce((sum, set) => sum + Math.max(0, set.length - 1), 0);
        fc.pre(nu > 0);
        const squares = sets.reduce((sum, set) => sum + (set.length ? byPairs(set) : 0), 0);
        expect(scatter(record)).toBeCloseTo(Math.sqrt(squares / nu), 10);
        expect(freedom(record)).toBe(nu);
      }),
    );
  });

  it("does not depend on the order of titrations or readings, nor on how sour each oil is", () => {
    fc.assert(
      fc.property(rows, reading, (record, more) => {
        fc.pre(record.some(({ titres, blanks }) => titres.length > 1 || blanks.length > 1));
        const turned = [...record].reverse().map(({ titres, blanks }) => ({
          titres: [...titres].reverse().map((titre) => Number((titre + more).toFixed(2))),
          blanks: [...blanks].reverse(),
        }));
        expect(scatter(turned)).toBeCloseTo(scatter(record), 12);
      }),
    );
  });

  it("learns nothing from a titration of one reading", () => {
    const record = [{ titres: [2.4, 2.5], blanks: [] }];
    const more = [...record, { titres: [7], blanks: [0.3] }];
    expect(scatter(more)).toBe(scatter(record));
    expect(freedom(more)).toBe(1);
  });

  it("sees none in an oil that titrates in exact proportion to its samples", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 }),
        fc.array(fc.integer({ min: 2, max: 30 }), { minLength: 2, maxLength: 5 }),
        (blank, masses) => {
          const blanks = [blank / 100];
          const titres = masses.map((mass) => Number((mass * 0.3 + blank / 100).toFixed(2)));
          expect(scatter([{ titres, blanks, masses }], 0.05)).toBeCloseTo(0.05 / Math.sqrt(6), 14);
        },
      ),
    );
  });

  it("is never below what the graduation alone makes, as given or as all readings show it", () => {
    const equal = [{ titres: [2.5, 2.5, 2.5], blanks: [] }];
    expect(scatter(equal, 0.05)).toBeCloseTo(0.05 / Math.sqrt(6), 14);
    const inferred = usualScatter(equal.map(titration), undefined);
    expect(inferred).toBeCloseTo(0.5 / Math.sqrt(6), 14);
  });

  it("asks for a titration of two readings, and for titres above their blank", () => {
    const one = usualScatter([titration({ titres: [2.4], blanks: [0.1] })], undefined);
    expect(isProblem(one) && say(one)).toBe(
      "Not enough data yet: no titration in titreSets has two readings, and one alone shows no scatter.",
    );
    const below = usualScatter([titration({ titres: [2.4, 0.1], blanks: [0.3] })], undefined);
    expect(isProblem(below) && below.fields.code).toBe("titre-below-blank");
  });

  it("counts blanks once, where two lots share them", () => {
    const own = titration({ titres: [2.4, 2.5], blanks: [0.1, 0.2] });
    const sharing = { ...titration({ titres: [3, 3.1], blanks: [0.1, 0.2] }), sharesBlanks: true };
    expect(usualFreedom([own, sharing])).toBe(3);
    expect(usualFreedom([own, { ...sharing, sharesBlanks: false }])).toBe(4);
  });
});
