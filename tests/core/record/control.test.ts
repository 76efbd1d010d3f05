import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exact } from "../../../src/core/exact/exact";
import { isProblem } from "../../../src/core/problem/problem";
import { say } from "../../../src/core/problem/wording";
import { controlChart } from "../../../src/core/record/control-chart";
import { controlFlags, isBeyond } from "../../../src/core/record/control-flags";
import { controlInWords } from "../../../src/core/record/control-words";

function chart(values: readonly number[], baseline?: number, step = 1e-9, weight = 0.2) {
  const found = controlChart(
    values.map(exact),
    baseline === undefined ? undefined : exact(baseline),
    exact(step),
    exact(weight),
  );
  if (isProblem(found)) throw new Error(say(found));
  return found;
}

/** Looks back over the last so many values from each place: no counting while walking. */
function flagsByWindows(values: readonly number[], centre: number, sigma: number): string[] {
  return values.map((value, place) => {
    const last = (count: number) => values.slice(Math.max(0, place + 1 - count), place + 1);
    const nine = last(9);
    const six = last(6);
    const steps = six.slice(1).map((each, at) => each - (six[at] ?? 0));
    if (Math.abs(value - centre) > 3 * sigma * (1 + 1e-9)) return "beyond limits";
    if (nine.length === 9 && nine.every((each) => each > centre + 1e-12)) return "nine on one side";
    if (nine.length === 9 && nine.every((each) => each < centre - 1e-12)) return "nine on one side";
    if (steps.length === 5 && steps.every((each) => each > 0)) return "six rising";
    if (steps.length === 5 && steps.every((each) => each < 0)) return "six falling";
    return "in control";
  });
}

const plain = fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 5, maxLength: 30 });
/** Runs: a walk by small steps, mostly one way. */
const walking = fc
  .array(fc.constantFrom(-1, 1, 1, 1, 2), { minLength: 5, maxLength: 30 })
  .map((steps) => {
    let at = 100;
    return steps.map((step) => (at += step));
  });
const values = fc.oneof(plain, walking).map((list) => list.map((n) => n / 100));

describe("the control chart", () => {
  it("flags what looking back over nine and six values finds", () => {
    fc.assert(
      fc.property(values, (list) => {
        const found = chart(list);
        const byWindows = flagsByWindows(list, found.centre.toNumber(), found.sigma);
        expect(controlFlags(found)).toEqual(byWindows);
      }),
    );
  });

  it("finds runs of both kinds, and what is beyond, in the walks it is tried on", () => {
    const rising = [0.5, 0.51, 0.52, 0.53, 0.54, 0.55, 0.56, 0.4, 0.6, 0.5];
    expect(controlFlags(chart(rising)).slice(5, 8)).toEqual([
      "six rising",
      "six rising",
      "in control",
    ]);
    const falling = rising.map((each) => Number((1.1 - each).toFixed(2)));
    expect(controlFlags(chart(falling))[5]).toBe("six falling");
    const sided = [0.1, 0.3, 0.1, 0.3, 0.1, 0.3, ...Array<number>(10).fill(0.21)];
    expect(controlFlags(chart(sided, 6))[14]).toBe("nine on one side");
    expect(controlFlags(chart([...sided, 3], 6)).at(-1)).toBe("beyond limits");
  });

  it("takes level values for no run, however many", () => {
    const level = [0.1, 0.3, ...Array<number>(8).fill(0.2)];
    expect(controlFlags(chart(level, 6))).toEqual(Array<string>(10).fill("in control"));
  });

  it("allows a limit to be missed by a billionth of it, and by no more", () => {
    expect(isBeyond(exact("3.000000002"), 3)).toBe(false);
    expect(isBeyond(exact("-3.000000002"), 3)).toBe(false);
    expect(isBeyond(exact("3.000000004"), 3)).toBe(true);
    expect(isBeyond(exact("-3.000000004"), 3)).toBe(true);
  });

  it("weighs each value by how long ago it was", () => {
    fc.assert(
      fc.property(values, fc.integer({ min: 5, max: 100 }), (list, hundredths) => {
        const w = hundredths / 100;
        const found = chart(list, undefined, 1e-9, w);
        const old = (1 - w) ** list.length * found.centre.toNumber();
        const sum = list.reduce(
          (total, value, place) => total + w * (1 - w) ** (list.length - 1 - place) * value,
          old,
        );
        expect(found.weighted.toNumber()).toBeCloseTo(sum, 12);
      }),
    );
  });

  it("takes centre and sigma from the baseline alone", () => {
    fc.assert(
      fc.property(values, values, (early, late) => {
        const found = chart([...early, ...late], early.length);
        const alone = chart(early);
        expect(found.centre.toNumber()).toBe(alone.centre.toNumber());
        expect(found.sigma).toBe(alone.sigma);
      }),
    );
  });

  it("never takes sigma below what the graduation makes", () => {
    expect(chart([0.1, 0.1, 0.1, 0.1, 0.1], undefined, 0.05).sigma).toBeCloseTo(0.0204124145, 10);
  });

  it("asks for five values, and for as many as the baseline has", () => {
    const code = (list: number[], baseline?: number) => {
      const found = controlChart(
        list.map(exact),
        baseline === undefined ? undefined : exact(baseline),
        undefined,
        exact(0.2),
      );
      return isProblem(found) ? say(found) : "";
    };
    expect(code([1, 2, 3, 4])).toContain("values has 4 values, and 5 or more are needed");
    expect(code([1, 2, 3, 4, 5], 8)).toContain("values has 5 values, and 8 or more are needed");
  });

  it("names the last value that is out, a slow shift, or that all is well", () => {
    const steady = [0.1, 0.12, 0.11, 0.1, 0.12, 0.11, 0.1, 0.12, 0.11, 0.1];
    expect(controlInWords(chart(steady))).toMatch(/^All 10 are in control/);
    expect(controlInWords(chart([...steady, 0.3], 10))).toBe(
      "0.3, value 11 of 11, is flagged (beyond limits): look for what changed before it.",
    );
    const shifted = [...steady, 0.13, 0.14, 0.13, 0.14, 0.13, 0.14, 0.13];
    expect(controlInWords(chart(shifted, 10))).toMatch(
      /^No single value is out, but their weighted/,
    );
    // by hand: from 0.109 on, each value by 0.2 and what was before by 0.8: 0.12963 in the end
    expect(controlInWords(chart([...steady, 0.14, 0.14, 0.14, 0.14, 0.14], 10))).toMatch(
      /mean, 0\.1296, is: something shifts slowly\.$/,
    );
  });
});
