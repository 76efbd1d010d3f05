/**
 * Functions that are not built yet are counted and named, so that none is passed over in silence.
 */
import { describe, expect, it } from "vitest";
import { functionNamed } from "../../src/functions/catalogue";
import { built, isRight, vectors } from "../vectors";
import { call } from "./outcome";

/** Functions not built yet, with how many vectors wait for each. */
const waiting: Record<string, number> = {
  FUELSOAP: 3,
  FUELCATALYST: 1,
  FUELMETAL: 3,
  GLYCEROL: 1,
  CONVERSION: 2,
  LOSSONHEATING: 2,
  WATERFROMGAS: 1,
  WATERBALANCE: 3,
  TEMPERATURERISE: 2,
  ENDPOINT: 4,
  STEEPNESS: 1,
  AGAINSTLIMIT: 3,
};

describe("the checked inputs and answers", () => {
  it("wait for the functions that are not built yet, and for no others", () => {
    const counted: Record<string, number> = {};
    for (const { fn } of vectors) {
      if (!functionNamed(fn)) counted[fn] = (counted[fn] ?? 0) + 1;
    }
    expect(counted).toEqual(waiting);
  });

  it("are all there", () => {
    expect(vectors).toHaveLength(187);
  });

  it.each(built)("hold for $fn: $why", (vector) => {
    const seen = call(vector.fn, ...vector.args);
    expect(isRight(seen, vector), JSON.stringify(seen)).toBe(true);
  });
});
