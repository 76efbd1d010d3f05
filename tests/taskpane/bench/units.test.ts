import { describe, expect, it } from "vitest";
import { draftFrom, reduce } from "../../../src/taskpane/bench/draft";
import { viewOf } from "../../../src/taskpane/bench/view-of";

describe("the box of a charge in My bench", () => {
  it("says what it may be in, before one of the two is chosen, and that one after", () => {
    const none = viewOf(draftFrom(undefined), ".");
    expect(none.figures.fact("chargeKOH").unit).toBe("g/L or %");
    const chosen = reduce(draftFrom(undefined), {
      do: "pick",
      picked: { chargeUnit: "g per litre" },
    });
    expect(viewOf(chosen, ".").figures.fact("chargeKOH").unit).toBe("g per litre");
  });
});
