import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { quantity } from "../../../src/core/quantity/quantity";
import { decimalSlip } from "../../../src/core/replicates/decimal-slip";
import { judgement, type Mark } from "../../../src/core/replicates/judgement";
import { replicateSet } from "../../../src/core/replicates/outlier-test";
import { vectors } from "../../vectors";

interface Usual {
  scatter: number;
  freedom: number;
}

const setOf = (readings: readonly number[], step?: number, usual?: Usual) =>
  replicateSet(
    readings.map((reading) => quantity("mL", reading)),
    step === undefined ? undefined : quantity("mL", step),
    quantity("%", 95),
    { usual },
  );
const marks = (readings: readonly number[], step?: number, usual?: Usual): readonly Mark[] =>
  judgement(setOf(readings, step, usual)).marks;

/** Without own masses, and not an error: what the core alone can be asked. */
const known = vectors.filter(
  ({ fn, args, expect: wanted }) =>
    fn === "OUTLIERS" && Array.isArray(wanted) && !Array.isArray(args[3]),
);

const reading = fc.integer({ min: 200, max: 320 }).map((n) => n / 100);
const set = fc.array(reading, { minLength: 2, maxLength: 8 });
const record = { scatter: 0.031, freedom: 20 };

describe("the judgement of replicates", () => {
  it.each(known)("agrees with the checked answer: $why", ({ args, expect: wanted }) => {
    const readings = (args[0] as unknown[][]).flat().filter((each) => typeof each === "number");
    const [step, scatter, freedom] = [args[1], args[5], args[6]] as (number | undefined)[];
    const usual = scatter && freedom ? { scatter, freedom } : undefined;
    const marksWanted = (wanted as string[][]).flat().filter((each) => each !== "");
    expect(marks(readings, step ?? undefined, usual)).toEqual(marksWanted);
  });

  it("never calls agreement what lies farther apart than three drops and three steps", () => {
    fc.assert(
      fc.property(set, fc.constantFrom(0.01, 0.05, 0.1), (readings, step) => {
        const found = marks(readings, step);
        const agreeing = readings.filter((_, place) => found[place] === "agrees");
        const apart = Math.max(...agreeing) - Math.min(...agreeing);
        if (agreeing.length) expect(apart).toBeLessThanOrEqual(Math.max(0.15, 3 * step) + 1e-9);
      }),
    );
  });

  it("flags one reading at most, and speaks of the others with one voice", () => {
    fc.assert(
      fc.property(set, fc.option(fc.constant(record), { nil: undefined }), (readings, usual) => {
        const found = marks(readings, 0.05, usual);
        const others = found.filter((mark) => mark !== "suspect");
        expect(found.length - others.length).toBeLessThanOrEqual(1);
        expect(new Set(others).size).toBe(1);
      }),
    );
  });

  it("says the same of readings in another order, and of all of them shifted", () => {
    fc.assert(
      fc.property(set, fc.integer({ min: 1, max: 500 }), (readings, more) => {
        const turned = [...readings]
          .reverse()
          .map((each) => Number((each + more / 100).toFixed(2)));
        expect([...marks(turned, 0.05, record)].reverse()).toEqual(marks(readings, 0.05, record));
      }),
    );
  });

  it("with a record of 20 finds a slip of 0.3 mL among three that agree", () => {
    // by hand: t(0.05/3; 20) is 2.613, x 0.031 x sqrt(2/3) = 0.0661; 0.3 shifted lies 0.2 out
    expect(marks([2.4, 2.4, 2.7], 0.05, record)).toEqual(["agrees", "agrees", "suspect"]);
    expect(marks([2.4, 2.4, 2.48], 0.01, record)).toEqual(["agrees", "agrees", "agrees"]);
  });

  it("of one reading is none, and allows nothing", () => {
    for (const usual of [undefined, record]) {
      expect(judgement(setOf([2.3], 0.05, usual))).toEqual({
        marks: ["not tested"],
        suspect: undefined,
        allowed: 0,
        farthest: undefined,
      });
    }
  });
});

describe("two readings as far from the mean as each other", () => {
  // by hand: 10 is the mean; 1 and 1 less 1e-10 of it lie either side
  it("are told apart where one lies nearer by more than a rounding error, 1e-10 of the distance", () => {
    const either = [11, 9.0000000001, 9.9999999999];
    expect(marks(either, 0.05, record)).toEqual(["apart", "apart", "apart"]);
    expect(marks([11, 9.000000001, 9.999999999], 0.05, record)[0]).toBe("suspect");
  });
});

describe("a decimal point in the wrong place", () => {
  const slip = (readings: readonly number[]) => {
    const found = setOf(readings);
    const seen = decimalSlip(found, judgement(found));
    return seen && [seen.place, seen.times, seen.perhaps.toNumber()];
  };

  it("is named, with what it may have been", () => {
    expect(slip([1.55, 16, 1.58])).toEqual([1, "10", 1.6]);
    expect(slip([1.55, 1.6, 158])).toEqual([2, "100", 1.58]);
    expect(slip([15.5, 1.56, 15.6])).toEqual([1, "0.1", 15.6]);
  });

  it("is not seen where all lie as near each other as readings may, though a test flags one", () => {
    // 0.08 mL apart; by hand G of 0.1 is 0.064 / 0.0358 = 1.79, above the 1.715 of five
    const small = [0.02, 0.02, 0.02, 0.02, 0.1];
    expect(marks(small, 0.01)).toEqual(["agrees", "agrees", "agrees", "agrees", "suspect"]);
    expect(slip(small)).toBeUndefined();
  });

  it("is not seen where readings agree, or differ by anything else", () => {
    expect(slip([1.55, 1.6, 1.58])).toBeUndefined();
    expect(slip([3.4, 2.5, 2.45])).toBeUndefined();
    expect(slip([2.3, 23])).toBeUndefined();
  });

  // by hand: 0.23 is a tenth of 2.3; with 2.4 none of the three is suspect to 0.1 mL (G 1.1531), all are apart
  it.each([
    [[2.3, 2.35, 23], 0.05, 2, "10"],
    [[2.3, 230, 2.35], 0.05, 1, "100"],
    [[0.23, 2.3, 2.4], 0.1, 0, "0.1"],
    [[2.3, 2.35, 0.023], 0.001, 2, "0.01"],
  ])("is found in %j, read to %d mL", (readings, step, place, times) => {
    const found = setOf(readings, step);
    expect(decimalSlip(found, judgement(found))).toMatchObject({ place, times });
  });
});
