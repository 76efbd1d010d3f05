/** No function is passed over in silence. */
import { describe, expect, it } from "vitest";
import { functionNamed } from "../../src/functions/catalogue";
import { built, isRight, vectors } from "../vectors";
import { call } from "./outcome";

describe("the checked inputs and answers", () => {
  it("are of functions that are there", () => {
    expect(vectors.filter(({ fn }) => !functionNamed(fn))).toEqual([]);
  });

  it("are all there", () => {
    expect(vectors).toHaveLength(187);
  });

  it.each(built)("hold for $fn: $why", (vector) => {
    const seen = call(vector.fn, ...vector.args);
    expect(isRight(seen, vector), JSON.stringify(seen)).toBe(true);
  });
});
