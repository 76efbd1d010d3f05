import { describe, expect, it } from "vitest";
import { judgement, type Mark } from "../../../src/core/replicates/judgement";
import { shownMarks } from "../../../src/core/replicates/named-reading";
import { verdict } from "../../../src/core/replicates/verdict";
import { setOf, setOnMasses } from "./readings";

const shown = (readings: readonly number[], step: number): readonly Mark[] => {
  const set = setOf(readings, step);
  return shownMarks(set, judgement(set));
};

describe("what is shown beside a reading", () => {
  it("is in one voice with the verdict: the one that it names, and no other", () => {
    expect(shown([2.3, 2.35, 2.3, 2.9], 0.05)).toEqual(["agrees", "agrees", "agrees", "suspect"]);
    // no test finds it among three to 0.1 mL, and it is a tenth of the others
    expect(shown([0.23, 2.3, 2.4], 0.1)).toEqual(["apart", "agrees", "agrees"]);
    expect(shown([2.3, 2.6, 2.9], 0.1)).toEqual(["apart", "apart", "apart"]);
  });

  it("is the verdict on own masses in words: to the last digit, or how far apart", () => {
    const said = (pairs: readonly (readonly [number, number])[]) => verdict(setOnMasses(pairs));
    expect(
      said([
        [2.1, 7],
        [2.1, 7],
      ]),
    ).toMatch(/^The two agree to the last digit read, each judged/);
    // by hand: on 7.5 g, 2.1 of 7 g is 2.25, 2.5 of 8 g is 2.34375
    expect(
      said([
        [2.1, 7],
        [2.5, 8],
      ]),
    ).toMatch(/^The two agree within 0\.1 mL, each judged on/);
  });
});
