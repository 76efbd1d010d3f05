import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { methanolPercent, molarRatio } from "../../../src/core/batch/conversions";
import { exact } from "../../../src/core/exact/exact";
import { isProblem } from "../../../src/core/problem/problem";
import { as } from "../../../src/core/quantity/quantity";
import { oilNotNamed } from "../../../src/core/reference/oils";

const litres = (ratio: number): number => {
  const found = methanolPercent(as("mol/mol", exact(ratio)), oilNotNamed);
  if (isProblem(found)) throw new Error("no litres");
  return found.toNumber();
};

describe("methanol by moles, in litres for 100 litres of oil", () => {
  it("is about a quarter of the oil for six to one", () => {
    // by hand: 6 x 32.042 x 91.5 kg / 885.43 (triolein) is 19.87 kg, of 0.7914 kg/L
    expect(litres(6)).toBeCloseTo((6 * 32.042 * 91.5) / 885.43 / 0.7914, 2);
  });

  it("is what the ratio is worked out from, the other way round", () => {
    fc.assert(
      fc.property(fc.integer({ min: 12, max: 60 }), (percent) => {
        const ratio = molarRatio(as("%", exact(percent)), oilNotNamed);
        expect(isProblem(ratio) ? 0 : litres(ratio.toNumber())).toBeCloseTo(percent, 9);
      }),
    );
  });
});
