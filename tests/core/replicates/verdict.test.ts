import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { quantity } from "../../../src/core/quantity/quantity";
import { judgement } from "../../../src/core/replicates/judgement";
import { replicateSet } from "../../../src/core/replicates/outlier-test";
import { shownMarks } from "../../../src/core/replicates/named-reading";
import { verdict } from "../../../src/core/replicates/verdict";
import { times } from "../../thorough";
import { mL, readings, setOf, setOnMasses } from "./readings";

const record = { scatter: 0.031, freedom: 20 };
const byRecord = (given: readonly number[], step = 0.05) =>
  verdict(replicateSet(given.map(mL), mL(step), quantity("%", 95), { usual: record }));

describe("the verdict", () => {
  it("says of readings that agree what to use, and nothing more", () => {
    expect(verdict(setOf([1.55, 1.6, 1.58], 0.05))).toBe(
      "The three agree within 0.05 mL: use 1.577 mL.",
    );
    expect(verdict(setOf([2.4, 2.55]))).toBe("The two agree within 0.15 mL: use 2.475 mL.");
    expect(byRecord([2.3, 2.35, 2.4])).toBe("The three agree within 0.10 mL: use 2.350 mL.");
  });

  /**
   * By hand, a record of 0.05 mL: squares of the titres 0.011667 of 2, of the blanks 0.0128 of 1. F tables
   * at 5 %: F(2, 20) = 3.49, F(3, 20) = 3.10; 2.33 without the blanks, 3.26 with them.
   */
  it("says behind agreement when titres and blanks of today scatter more than the record explains", () => {
    const usual = { scatter: 0.05, freedom: 20 };
    const of = (blanks: readonly number[]): string =>
      verdict(
        replicateSet([2.4, 2.5, 2.35].map(mL), mL(0.05), quantity("%", 95), {
          usual,
          blanks: blanks.map(mL),
        }),
      );
    const agree = "The three agree within 0.15 mL: use 2.417 mL.";
    expect(of([])).toBe(agree);
    expect(of([0.1, 0.26])).toBe(
      `${agree} Today scatters more than usual: only today’s readings are counted in the ±.`,
    );
  });

  it("says that equal readings prove no lack of scatter", () => {
    expect(verdict(setOf([2.3, 2.3, 2.3]))).toBe(
      "All three readings are 2.3 mL: use it. Equal readings show no scatter; they do not prove that there is none.",
    );
    expect(verdict(setOf([2.4, 2.4], 0.01))).toMatch(/^Both readings are 2\.40 mL: use it\./);
  });

  it("flags beside the readings the very ones that it speaks of", () => {
    const reading = fc.oneof(
      fc.integer({ min: 220, max: 250 }).map((n) => n / 100),
      fc.constantFrom(2.9, 4, 23.5, 0.24),
    );
    const usual = fc.option(fc.constant(record), { nil: undefined });
    fc.assert(
      fc.property(fc.array(reading, { minLength: 2, maxLength: 5 }), usual, (given, known) => {
        const set = replicateSet(given.map(mL), mL(0.05), quantity("%", 95), { usual: known });
        const flags = shownMarks(set, judgement(set));
        const flagged = given.filter((_, place) => flags[place] !== "agrees");
        const words = verdict(set);
        // "2.90 mL is 0.55 mL away from the two that agree", "23.5 mL is about ten times the others"
        const named = /^([\d.]+) mL is /.exec(words)?.[1];
        if (/and the other |no one can say/.test(words)) expect(flagged).toEqual(given);
        else if (named === undefined) expect(flagged).toEqual([]);
        else expect(flagged).toEqual([Number(named)]);
      }),
      { numRuns: times(150) },
    );
    const far = setOf([2.3, 2.35, 2.9]);
    expect(shownMarks(far, judgement(far))).toEqual(["agrees", "agrees", "apart"]);
  });

  it("names the reading that is far from others that agree, and how far, even at three", () => {
    expect(verdict(setOf([2.3, 2.35, 4], 0.05))).toBe(
      "4.00 mL is 1.65 mL away from the two that agree. Titrate again.",
    );
    expect(verdict(setOf([3.4, 2.5, 2.45], 0.05))).toBe(
      "3.40 mL is 0.90 mL away from the two that agree. Titrate again.",
    );
    // read to nothing that fits them all
    expect(verdict(setOf([2.3001, 2.3503, 4]))).toMatch(
      /^4\.0000 mL is 1\.6497 mL away from the two/,
    );
  });

  it("takes a reading for far from others at more than three times what they may lie apart", () => {
    // by hand: 0.15 mL is allowed, 0.45 are three times that
    expect(verdict(setOf([2.3, 2.35, 2.8], 0.05))).toMatch(/^The three lie 0\.50 mL apart/);
    expect(verdict(setOf([2.3, 2.35, 2.85], 0.05))).toMatch(
      /^2\.85 mL is 0\.50 mL away from the two/,
    );
    expect(verdict(setOf([2.8, 2.85, 2.3], 0.05))).toMatch(
      /^2\.30 mL is 0\.50 mL away from the two/,
    );
  });

  it("shows up to six decimals as typed, and ten digits of a reading that was worked out", () => {
    expect(verdict(setOf([2.12]))).toMatch(/^One reading, 2\.12 mL/);
    expect(verdict(setOf([2.123456]))).toMatch(/^One reading, 2\.123456 mL/);
    expect(verdict(setOf([2.1234567]))).toMatch(/^One reading, 2\.1234567 mL/);
    expect(verdict(setOf([2.12345678949]))).toMatch(/^One reading, 2\.123456789 mL/);
  });

  it("says the distance in mL, on masses of their own as well", () => {
    // by hand: 3.85 less 2.35
    const alike = [2.3, 2.35, 2.3, 3.85].map((titre) => [titre, 5] as const);
    expect(verdict(setOnMasses(alike))).toMatch(/^3\.85 mL is 1\.50 mL away from the three/);
    expect(verdict(setOf([2.3, 2.35, 2.3, 3.85]))).toMatch(/^3\.85 mL is 1\.50 mL away from/);
  });

  it("names no reading where no one can say which it was, and gives no dose", () => {
    expect(verdict(setOf([2.3, 2.35, 2.4, 2.8], 0.05))).toBe(
      "The four lie 0.50 mL apart, and no one can say which is off: titrate again before any dose (up to 0.15 mL apart counts as agreement).",
    );
    expect(verdict(setOf([2.3, 9], 0.1))).toMatch(/^The two lie 6\.7 mL apart.*\(up to 0\.3 mL/);
    // t(0.9875; 20) is 2.42 by the tables; times 0.031 and the root of a half: 0.053
    expect(byRecord([2.3, 2.5])).toBe(
      "The two lie 0.20 mL apart, and no one can say which is off: titrate again before any dose (your usual scatter explains 0.053 mL from the mean).",
    );
  });

  it("offers to leave a suspect reading out where three are left, and asks for a reason", () => {
    expect(verdict(setOf([2.3, 2.31, 2.32, 2.9]))).toBe(
      "2.90 mL is 0.58 mL away from the three that agree. Titrate again, or leave it out and write why.",
    );
    expect(byRecord([2.3, 2.35, 2.6])).toBe(
      "2.60 mL is 0.25 mL away from the two that agree. Titrate again.",
    );
  });

  it("names a slip of the decimal point, and what it may have been", () => {
    expect(verdict(setOf([1.55, 16, 1.58]))).toBe(
      "16.00 mL is about ten times the others: was it 1.60 mL? Correct it if your notes say so; otherwise titrate again.",
    );
    expect(verdict(setOf([15.5, 1.56, 15.6]))).toMatch(/about a tenth of the others: was it 15\.6/);
    expect(byRecord([1.55, 158, 1.58], 0.01)).toMatch(
      /a hundred times the others: was it 1\.58 mL/,
    );
  });

  it("says so where even the others lie apart", () => {
    expect(verdict(setOf([199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57]))).toBe(
      "245.57 mL lies apart, and the other seven lie 2.87 mL apart: titrate again before any dose (up to 0.15 mL apart counts as agreement).",
    );
  });

  it("names the reading as typed, and judges it on its own mass", () => {
    const words = verdict(
      setOnMasses([
        [2.3, 5],
        [2.31, 5.02],
        [2.3, 5.01],
        [3.9, 6],
      ]),
    );
    expect(words).toMatch(/^3\.90 mL is \d\.\d\d mL away from the three that agree\. Titrate/);
    expect(
      verdict(
        setOnMasses([
          [3.5, 10],
          [4.2, 12],
          [2.8, 8],
        ]),
      ),
    ).toBe("The three agree to the last digit read, each judged on its own mass: use all of them.");
  });

  const anySet = fc.tuple(
    readings(1, 40),
    fc.option(fc.constant(record), { nil: undefined }),
    fc.option(fc.constantFrom(0.01, 0.05, 0.1), { nil: undefined }),
  );

  it("is a sentence or two of at most 200 characters, whatever was read", () => {
    fc.assert(
      fc.property(anySet, ([values, usual, step]) => {
        const words = verdict(
          replicateSet(values.map(mL), step ? mL(step) : undefined, quantity("%", 95), { usual }),
        );
        expect(words.length).toBeLessThanOrEqual(200);
        expect(words).toMatch(/^[A-Z0-9].*\.$/);
        expect(words).not.toMatch(/NaN|Infinity|undefined|best two/);
      }),
    );
  });

  it("says to use readings where all agree, and to titrate again where any does not", () => {
    fc.assert(
      fc.property(anySet, ([values, usual, step]) => {
        const set = replicateSet(values.map(mL), step ? mL(step) : undefined, quantity("%", 95), {
          usual,
        });
        const { marks } = judgement(set);
        const isGood = marks.every((mark) => mark === "agrees");
        expect(/: use /.test(verdict(set))).toBe(isGood);
        expect(/itrate a/.test(verdict(set))).toBe(!isGood);
      }),
    );
  });

  it("stays short for the longest figures a sheet can hold", () => {
    const long = [123.456789012345, 987.654321098765, 123.456789012344, 123.456789012346];
    for (const count of [1, 2, 3, 4]) {
      expect(verdict(setOf(long.slice(0, count))).length).toBeLessThanOrEqual(200);
    }
    expect(verdict(setOnMasses(long.map((x, n) => [x, 7 + n]))).length).toBeLessThanOrEqual(200);
  });
});
