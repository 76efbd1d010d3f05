import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { exact } from "../../../src/core/exact/exact";
import { inferredStep } from "../../../src/core/replicates/step";

const step = (...readings: number[]): string => inferredStep(readings.map(exact)).toString();

describe("the step inferred from readings as typed", () => {
  it("is the coarsest usual step they are all multiples of", () => {
    expect(step(2.3, 2.35, 2.9)).toBe("0.05");
    expect(step(2.3, 2.4, 2.5)).toBe("0.1");
    expect(step(2.4, 2.46, 2.5)).toBe("0.02");
    expect(step(2.4, 2.45, 2.47)).toBe("0.01");
    expect(step(2.4, 2.6)).toBe("0.2");
    expect(step(2, 3, 7)).toBe("1");
    expect(step(2.5, 3)).toBe("0.5");
    expect(step(2.405, 2.41)).toBe("0.005");
    expect(step(2.402, 2.41)).toBe("0.002");
    expect(step(1e-3, 1e3)).toBe("0.001");
  });

  it("is 0 when no usual step fits", () => {
    expect(step(2.3333, 2.4)).toBe("0");
    expect(step(0.0005)).toBe("0");
  });

  it("is decided exactly, where the remainder of doubles would not be 0", () => {
    expect(2.3 % 0.1).not.toBe(0);
    fc.assert(
      fc.property(
        fc.constantFrom(0.001, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1),
        fc.array(fc.integer({ min: 1, max: 20_000 }), { minLength: 1, maxLength: 6 }),
        (size, counts) => {
          const found = inferredStep(counts.map((count) => exact(String(size)).times(count)));
          expect(found.gte(exact(size))).toBe(true);
        },
      ),
    );
  });
});
