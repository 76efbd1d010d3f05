import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exact } from "../../../src/core/exact/exact";
import { deviations, sampleDeviation } from "../../../src/core/replicates/deviations";
import { dixonProbabilityOfThree, dixonRatio } from "../../../src/core/replicates/dixon";
import { farthest, grubbsProbability, largestG } from "../../../src/core/replicates/grubbs";
import { outlierTest } from "../../../src/core/replicates/outlier-test";
import { reading, readings, setOf, setOnMasses } from "./readings";

const spreads = (values: readonly number[]): boolean => new Set(values).size > 1;

describe("the outlier test", () => {
  it("keeps 2.90 beside 2.30 and 2.35: three readings cannot settle it", () => {
    const found = outlierTest(setOf([2.3, 2.35, 2.9]));
    expect(found?.reading.toString()).toBe("2.9");
    expect(found?.plain).toBeCloseTo(1.15144, 5);
    expect(found?.probability).toBeCloseTo(0.143554, 6);
    expect(found?.isSuspect).toBe(false);
  });

  it("finds 2.90 among four", () => {
    expect(outlierTest(setOf([2.3, 2.31, 2.32, 2.9]))?.isSuspect).toBe(true);
  });

  it("never flags one division beside two equal readings, though the plain G is at its bound", () => {
    const found = outlierTest(setOf([2.3, 2.3, 2.4]));
    expect(found?.plain).toBeCloseTo(largestG(3), 12);
    expect(found?.probability).toBe(0);
    expect(found?.isSuspect).toBe(false);
  });

  it("has nothing to test in one, two, or any number of equal readings", () => {
    for (const set of [[2.3], [2.3, 2.9], [2.3, 2.3, 2.3], Array<number>(100).fill(4.35)]) {
      expect(outlierTest(setOf(set))).toBeUndefined();
    }
    expect(sampleDeviation(Array<number>(6).fill(4.35).map(exact))).toBe(0);
  });

  it("names the first in reading order of two that are as far", () => {
    const tie = [...Array<number>(9).fill(2.3), 2.1, ...Array<number>(9).fill(2.3), 2.5];
    expect(outlierTest(setOf(tie, 0.01))?.position).toBe(9);
    expect(outlierTest(setOf([...tie].reverse(), 0.01))?.position).toBe(0);
  });

  it("judges each reading on its own sample mass", () => {
    const titres = [2.3, 2.31, 2.3, 2.76];
    const masses = [5.0, 5.02, 5.01, 6.0];
    expect(outlierTest(setOf(titres))?.isSuspect).toBe(true);
    const pairs = titres.map((titre, place) => [titre, masses[place] ?? 0] as const);
    expect(outlierTest(setOnMasses(pairs))?.isSuspect).toBe(false);
  });

  it("finds nothing to test in readings in exact proportion to their masses", () => {
    const inProportion = [
      [2.1, 0.7],
      [4.2, 1.4],
      [6.3, 2.1],
      [0.3, 0.1],
    ] as const;
    expect(outlierTest(setOnMasses(inProportion))).toBeUndefined();
  });

  it("equal masses change nothing", () => {
    fc.assert(
      fc.property(readings(3), reading, (values, mass) => {
        const own = outlierTest(setOnMasses(values.map((value) => [value, mass])));
        expect(own).toEqual(outlierTest(setOf(values)));
      }),
    );
  });

  it("gives the same figures in any order of readings", () => {
    fc.assert(
      fc.property(readings(3), (values) => {
        const one = outlierTest(setOf(values));
        const other = outlierTest(setOf([...values].reverse()));
        expect(other?.isSuspect).toBe(one?.isSuspect);
        expect(other?.graduated ?? 0).toBeCloseTo(one?.graduated ?? 0, 12);
      }),
    );
  });

  it("scales with the unit: readings and step ten times as large give the same figures", () => {
    fc.assert(
      fc.property(readings(3), (values) => {
        const one = outlierTest(setOf(values, 0.01));
        const ten = outlierTest(
          setOf(
            values.map((value) => Number((10 * value).toFixed(1))),
            0.1,
          ),
        );
        expect(ten?.position).toBe(one?.position);
        expect(ten?.graduated ?? 0).toBeCloseTo(one?.graduated ?? 0, 12);
      }),
    );
  });

  it("never gives a figure that is not one, and a coarser step never makes a reading more suspect", () => {
    fc.assert(
      fc.property(readings(3, 100), (values) => {
        const fine = outlierTest(setOf(values, 0.001));
        const coarse = outlierTest(setOf(values, 0.1));
        expect(fine === undefined).toBe(!spreads(values));
        if (!fine || !coarse) return;
        for (const figure of [fine.plain, fine.graduated, fine.critical, fine.probability]) {
          expect(Number.isFinite(figure)).toBe(true);
        }
        expect(fine.probability).toBeGreaterThanOrEqual(0);
        expect(fine.probability).toBeLessThanOrEqual(1);
        expect(coarse.graduated).toBeLessThanOrEqual(fine.graduated);
        expect(fine.graduated).toBeLessThanOrEqual(fine.plain);
        expect(fine.plain).toBeLessThanOrEqual(largestG(values.length) * (1 + 1e-12));
      }),
    );
  });

  it("calls two pairs as far from the mean as each other no chance at all: a probability of 1", () => {
    expect(outlierTest(setOf([2.3, 2.3, 2.4, 2.4]))?.probability).toBe(1);
  });

  it("works from 1e-3 to 1e3 mL", () => {
    expect(outlierTest(setOf([0.001, 0.002, 0.001, 0.002]))?.isSuspect).toBe(false);
    expect(outlierTest(setOf([999.99, 1000, 999.98, 990]))?.isSuspect).toBe(true);
  });
});

describe("Grubbs and Dixon at three readings", () => {
  it("are the same test: G = (1 + Q) / sqrt(3 (1 - Q + Q^2)), and the same p", () => {
    fc.assert(
      fc.property(readings(3, 3).filter(spreads), (values) => {
        const exactly = values.map(exact);
        const q = dixonRatio(exactly);
        const ratio = q.toNumber();
        const g = farthest(deviations(exactly), 0).plain;
        expect(g).toBeCloseTo((1 + ratio) / Math.sqrt(3 * (1 - ratio + ratio * ratio)), 10);
        expect(grubbsProbability(g, 3)).toBeCloseTo(dixonProbabilityOfThree(q), 6);
      }),
    );
  });

  it("is 0 where all readings are equal, and the larger gap of the two", () => {
    const ratio = (...values: number[]) => dixonRatio(values.map((each) => exact(each))).toNumber();
    expect(ratio(2.3, 2.3, 2.3)).toBe(0);
    // by hand: gaps of 0.1 and 0.3 in a range of 0.4
    expect([ratio(2.3, 2.4, 2.7), ratio(2.3, 2.6, 2.7)]).toEqual([0.75, 0.75]);
  });
});
