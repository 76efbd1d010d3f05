import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exact } from "../../../src/core/exact/exact";
import { as } from "../../../src/core/quantity/quantity";
import { usual } from "../../../src/core/reference/defaults";
import { type Band, bandOf } from "../../../src/core/replicates/band";
import { judgement } from "../../../src/core/replicates/judgement";
import { replicateSet } from "../../../src/core/replicates/outlier-test";

const inMillilitres = (value: number) => as("mL", exact(value.toFixed(3)));

/** Readings anywhere, near each other or not, on any scale, with a record or without. */
const sets = fc
  .record({
    start: fc.integer({ min: 200, max: 9000 }),
    off: fc.array(fc.integer({ min: -60, max: 60 }), { minLength: 0, maxLength: 6 }),
    slip: fc.integer({ min: -150, max: 900 }),
    step: fc.constantFrom(0.01, 0.02, 0.05, 0.1),
    usual: fc.option(
      fc.record({
        scatter: fc.integer({ min: 4, max: 90 }).map((each) => each / 1000),
        freedom: fc.integer({ min: 1, max: 60 }),
      }),
      { nil: undefined },
    ),
  })
  .map(({ start, off, slip, step, usual: record }) => {
    const readings = [...off.map((each) => start + each), start + slip];
    return replicateSet(
      readings.map((each) => inMillilitres(Math.max(1, each) / 1000)),
      inMillilitres(step),
      usual.confidence,
      { usual: record },
    );
  });

/** On the edge is inside, but for a rounding error. */
const isInside = ({ from, to }: Band, reading: number): boolean => {
  const slack = 1e-9 * Math.max(Math.abs(from), Math.abs(to));
  return reading >= from - slack && reading <= to + slack;
};

describe("the band that chance explains", () => {
  it("holds all readings that agree, no suspect, and not all that are apart", () => {
    fc.assert(
      fc.property(sets, (set) => {
        const found = judgement(set);
        const band = bandOf(set, found);
        const inside = set.judged.map((each) => isInside(band, each.toNumber()));
        if (found.marks.every((mark) => mark === "agrees")) expect(inside).not.toContain(false);
        if (found.marks.includes("apart")) expect(inside).toContain(false);
        if (found.suspect !== undefined) expect(inside[found.suspect]).toBe(false);
        expect(band.from).toBeLessThanOrEqual(band.to);
      }),
    );
  });

  it("shows around one reading where a second agrees, and no farther", () => {
    fc.assert(
      fc.property(sets, fc.integer({ min: -400, max: 400 }), (set, off) => {
        const [first] = set.judged;
        if (first === undefined || first.toNumber() + off / 1000 <= 0) return;
        const alone = { ...set, readings: [first], judged: [first] };
        const second = inMillilitres(first.toNumber() + off / 1000);
        const both = { ...set, readings: [first, second], judged: [first, second] };
        const agrees = judgement(both).marks.every((mark) => mark === "agrees");
        expect(isInside(bandOf(alone), second.toNumber())).toBe(agrees);
      }),
    );
  });

  it("lies about the two that agree where the third stands alone: 2.25 to 2.40 for 2.30, 2.35 and 4.00", () => {
    const readings = [2.3, 2.35, 4].map(inMillilitres);
    const { from, to } = bandOf(replicateSet(readings, inMillilitres(0.05), usual.confidence));
    expect(from).toBeCloseTo(2.25, 12);
    expect(to).toBeCloseTo(2.4, 12);
  });

  it("is three drops wide about two readings on a scale of 0.05 mL: 2.30 and 2.40 give 2.275 to 2.425", () => {
    const set = replicateSet(
      [inMillilitres(2.3), inMillilitres(2.4)],
      inMillilitres(0.05),
      usual.confidence,
    );
    const { from, to } = bandOf(set);
    expect(from).toBeCloseTo(2.275, 12);
    expect(to).toBeCloseTo(2.425, 12);
  });

  // By hand: off 0.083333 of a mean of 2.316667, s 0.0408248, with graduation 0.0410281; critical G of 6: 1.887.
  it("ends where the outlier test does, if that is nearer than three drops", () => {
    const readings = [2.3, 2.3, 2.3, 2.3, 2.3, 2.4].map(inMillilitres);
    const { from, to } = bandOf(replicateSet(readings, inMillilitres(0.01), usual.confidence));
    expect(from).toBeCloseTo(2.316667 - (0.083333 * 1.8871) / 2.03113, 4);
    expect(to).toBeCloseTo(2.375, 12);
    const low = [2.4, 2.4, 2.4, 2.4, 2.4, 2.3].map(inMillilitres);
    const turned = bandOf(replicateSet(low, inMillilitres(0.01), usual.confidence));
    expect(turned.from).toBeCloseTo(2.325, 12);
    expect(turned.to).toBeCloseTo(2.383333 + (0.083333 * 1.8871) / 2.03113, 4);
  });

  it("lies about the mean by a record, and about the middle of the ends without one", () => {
    const readings = [2.3, 2.32, 2.4].map(inMillilitres);
    const middle = ({ from, to }: Band) => (from + to) / 2;
    const set = (record?: { scatter: number; freedom: number }) =>
      replicateSet(readings, inMillilitres(0.01), usual.confidence, { usual: record });
    expect(middle(bandOf(set()))).toBeCloseTo(2.35, 12);
    expect(middle(bandOf(set({ scatter: 0.05, freedom: 20 })))).toBeCloseTo(2.34, 12);
  });
});
