import { describe, expect, it } from "vitest";
import { waterOf } from "../../../src/core/batch/water";
import { quantity } from "../../../src/core/quantity/quantity";

describe("the water of a batch", () => {
  // 91.5 kg of oil with 0.06 %, AV 1.2903, KOH 90 %, 0.765 %: .0549 + .0379 + .2248 + .0909 kg, by hand.
  it("is that of the oil, the acid, base and methanol, and the lye together", () => {
    const made = {
      waterFromAcid: quantity("kg", 0.0379),
      waterFromBase: quantity("kg", 0.2248),
      waterInLye: quantity("kg", 0.0909),
    };
    const found = waterOf(quantity("kg", 91.5), quantity("%", 0.06), made);
    expect(found.inOil.toNumber()).toBeCloseTo(0.0549, 12);
    expect(found.all.toNumber()).toBeCloseTo(0.4085, 12);
    expect(found.percent.toFixed(3)).toBe("0.446");
    expect(waterOf(quantity("kg", 91.5), undefined, made).inOil.toNumber()).toBe(0);
  });
});
