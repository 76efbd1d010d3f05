import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { outlierTest } from "../../../src/core/replicates/outlier-test";
import { verdict } from "../../../src/core/replicates/verdict";
import { readings, setOf, setOnMasses } from "./readings";

describe("the verdict", () => {
  it("says of one or two readings what they cannot tell, and what to do", () => {
    expect(verdict(setOf([2.4], 0.01))).toBe(
      "One reading, 2.40 mL: nothing to compare it with; titrate at least twice more.",
    );
    expect(verdict(setOf([2.4, 2.55]))).toBe(
      "Two readings, 2.40 and 2.55 mL, 0.15 mL apart: no test can say which is off; titrate a third and a fourth.",
    );
    expect(verdict(setOf([2.4, 2.4]))).toMatch(/two that agree prove little; titrate a third/);
  });

  it("says why equal readings are not tested", () => {
    expect(verdict(setOf([2.3, 2.3, 2.3]))).toMatch(
      /^All 3 readings are 2\.3 mL: no spread to test/,
    );
    expect(verdict(setOf([2.3, 2.3, 2.3, 2.3]))).toMatch(/use the mean\.$/);
  });

  it("shows the mean with and without a suspect reading, and asks for a reason", () => {
    const words = verdict(setOf([2.3, 2.31, 2.32, 2.9]));
    expect(words).toMatch(/^2\.90 mL is suspect/);
    expect(words).toContain("mean 2.458 mL with it, 2.310 without");
    expect(words).toContain("with the reason noted");
  });

  it("names the reading as typed, on its mass where it has its own", () => {
    const words = verdict(
      setOnMasses([
        [2.3, 5],
        [2.31, 5.02],
        [2.3, 5.01],
        [3.9, 6],
      ]),
    );
    expect(words).toMatch(/^3\.90 mL is suspect for its mass/);
  });

  it("at three readings always says that a fourth titre settles more than any test", () => {
    fc.assert(
      fc.property(readings(3, 3), (values) => {
        expect(verdict(setOf(values))).toContain("a fourth titre settles more than any test");
      }),
    );
  });

  it("is one sentence of at most 200 characters that names the tested reading and its figures", () => {
    fc.assert(
      fc.property(readings(1, 40), (values) => {
        const set = setOf(values);
        const words = verdict(set);
        expect(words.length).toBeGreaterThanOrEqual(6);
        expect(words.length).toBeLessThanOrEqual(200);
        expect(words).toMatch(/^[A-Z0-9].*\.$/);
        expect(words).not.toMatch(/NaN|Infinity|undefined|best two/);
        const found = outlierTest(set);
        if (!found) return;
        const places = Math.max(set.step.decimalPlaces(), ...set.readings.map((x) => x.dp()));
        expect(words.startsWith(`${found.reading.toFixed(places)} mL`)).toBe(true);
        expect(words).toContain(`G ${found.graduated.toFixed(4)}`);
        expect(words).toContain(`limit ${found.critical.toFixed(4)}`);
      }),
    );
  });

  it("stays short for the longest figures a sheet can hold", () => {
    const long = [123.456789012345, 987.654321098765, 123.456789012344, 123.456789012346];
    expect(verdict(setOf(long)).length).toBeLessThanOrEqual(200);
    expect(verdict(setOf(long.slice(0, 3))).length).toBeLessThanOrEqual(200);
    expect(verdict(setOf(long.slice(0, 2))).length).toBeLessThanOrEqual(200);
    expect(verdict(setOnMasses(long.map((x, n) => [x, 7 + n]))).length).toBeLessThanOrEqual(200);
  });
});
