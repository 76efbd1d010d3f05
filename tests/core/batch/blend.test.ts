import { describe, expect, it } from "vitest";
import { blendedHalfWidth } from "../../../src/core/batch/blend";

describe("the doubt of a mix's acid", () => {
  // By hand: 0.4 x 0.25 + 0.2 x 0.75 = 0.25; as a root of squares it would be 0.18.
  it("is the doubt of each lot by its share, added as if all erred the same way", () => {
    expect(
      blendedHalfWidth([
        [0.4, 0.25],
        [0.2, 0.75],
      ]),
    ).toBeCloseTo(0.25, 12);
  });
});
