/** The charge of My bench in What if: worked with as percent, said as the bench says it. */
import { describe, expect, it } from "vitest";
import { standingOf, whatIfFrom } from "../../../src/taskpane/bench/begin-from";
import { whatIfOtherwise } from "../../../src/taskpane/bench/otherwise";
import { whatIfSays } from "../../../src/taskpane/bench/says";
import { newDraft } from "../../../src/taskpane/what-if/draft";
import { reduce } from "../../../src/taskpane/what-if/reducer";
import { viewOf } from "../../../src/taskpane/what-if/view-of";
import type { BenchValues } from "../../../src/workbook/tables/bench";

const values: BenchValues = {
  base: "NaOH",
  assayNaOH: "97",
  chargeNaOH: "5.5",
  chargeUnit: "g per litre",
  chargeIs: "lye as weighed",
  limit: "3",
};

describe("the charge of my bench in a table over sizes", () => {
  // by hand: 5.5 g of 97 % in a litre of 0.915 kg: 5.335/915 = 0.58306 %
  const begun = reduce(newDraft(), whatIfFrom(values, "."));

  it("is taken as percent of the oil, pure, and said as the bench says it", () => {
    expect(begun.typed.charge).toBe("0.5831");
    expect(whatIfSays(viewOf(begun, ".", []), values)).toContain("charge 5.5 g/L, as weighed");
    const comma = reduce(newDraft(), whatIfFrom(values, ","));
    expect(whatIfSays(viewOf(comma, ",", []), values)).toContain("charge 5,5 g/L, as weighed");
  });

  it("is another of a lighter oil, and said as percent where somebody typed their own", () => {
    const canola = reduce(begun, { do: "pick", picked: { oil: "canola" } });
    // 5.335/915.4 = 0.58280 %
    expect(standingOf(canola, values, ".").typed.charge).toBe("0.5828");
    const own = reduce(begun, { do: "type", field: "charge", text: "0.6" });
    expect(whatIfSays(viewOf(own, ".", []), values)).toContain("charge 0.6 % of the oil, pure");
    expect(whatIfOtherwise(viewOf(own, ".", []), values).join()).toContain("5.5 g/L, as weighed");
    expect(whatIfOtherwise(viewOf(begun, ".", []), values)).toEqual([]);
  });

  it("is left to be typed where nobody said whether it is pure", () => {
    expect(whatIfFrom({ ...values, chargeIs: "" }, ".").typed.charge).toBeUndefined();
  });
});
