/** What is to be done with a fuel, each case typed by hand. */
import { describe, expect, it } from "vitest";
import { exact } from "../../../src/core/exact/exact";
import { fuelMost } from "../../../src/core/reference/fuel-limits";
import { type FuelFound, isWell, notMeasured, toDo } from "../../../src/core/fuel/meaning";

const good: FuelFound = {
  washed: "yes",
  acid: "below",
  metal: { verdict: "below", found: exact("1.2") },
  hasFreeBase: false,
  water: exact("0.03"),
  trial: "clear",
};
const said = (change: Partial<FuelFound>): string[] =>
  toDo({ ...good, ...change }).map(({ what }) => what);
const above = (metal: string): Partial<FuelFound> => ({
  metal: { verdict: "above", found: exact(metal) },
});

describe("what the figures of a fuel ask for", () => {
  it("is nothing where all is under its limit", () => {
    expect(said({})).toEqual([]);
    expect(isWell(good)).toBe(true);
    expect(notMeasured(good)).toEqual([]);
  });

  // a third is left by each wash: 15 → 5 takes one, 15.1 → 5.03 → 1.7 two, 611 → … → 2.5 five
  it.each([
    ["15", "Wash once more."],
    ["15.1", "Wash 2 times more."],
    ["45", "Wash 2 times more."],
    ["611", "Wash 5 times more."],
    ["5.01", "Wash once more."],
    // 5 x 3^6 = 3645
    ["3645", "Wash 6 times more."],
    ["3646", "Wash it, and titrate again after two."],
    ["9000", "Wash it, and titrate again after two."],
  ])("is to wash by the metal left: %s mg/kg", (metal, what) => {
    expect(said(above(metal))).toEqual([what]);
    expect(isWell({ ...good, ...above(metal) })).toBe(false);
  });

  it("is not to wash more what was not washed yet", () => {
    const asked = (metal: string) => said({ ...above(metal), washed: "no" })[0];
    expect([asked("611"), asked("15")]).toEqual(["Wash 5 times.", "Wash once."]);
  });

  it("is never to judge acid in unwashed fuel", () => {
    for (const acid of ["below", "above", "cannot tell"] as const) {
      expect(said({ washed: "no", acid })).toEqual(["Titrate the acid again once it is washed."]);
    }
  });

  it("holds acid, metal and water against what both standards ask", () => {
    expect(Object.entries(fuelMost).map(([of, most]) => `${of} ${most.toFixed(2)}`)).toEqual([
      "acid 0.50",
      "metals 5.00",
      "water 0.05",
    ]);
  });

  it("is to dry, to react again first of all, to titrate once more", () => {
    expect(said({ water: exact("0.051") })).toEqual(["Dry it."]);
    expect(said({ water: exact("0.05") })).toEqual([]);
    expect(said({ trial: "cloudy", washed: "yes" })).toEqual(["React it again, dried first."]);
    expect(said({ ...above("15"), trial: "cloudy", washed: "" })).toEqual([
      "React it again, before it is washed.",
      "Wash once more.",
    ]);
    expect(said({ acid: "cannot tell" })).toEqual(["Titrate the acid once more."]);
    expect(said({ acid: "above" })[0]).toMatch(/too much acid/i);
    expect(said({ metal: { verdict: "cannot tell", found: exact(5) } })).toEqual([
      "Titrate the soap on a larger sample.",
    ]);
  });

  it("is told why, in two digits of water, and by what else was found", () => {
    const why = (change: Partial<FuelFound>) => toDo({ ...good, ...change })[0]?.why;
    expect(why({ water: exact("0.0567") })).toMatch(/^Water 0\.057 % is above 0\.05 %: /);
    expect(why({ acid: "above", hasFreeBase: true })).toMatch(/^Free base beside acid cannot be/);
    expect(why({ acid: "above", hasFreeBase: false })).toMatch(/^It comes from oil whose acid/);
  });

  it("says what was not measured, and calls no fuel good for it", () => {
    const bare: FuelFound = { ...good, acid: undefined, water: undefined, trial: "" };
    expect(notMeasured(bare)).toEqual(["acid value", "water", "the methanol trial"]);
    expect(isWell(bare)).toBe(false);
    expect(notMeasured({ ...good, metal: undefined })).toEqual(["soap and metal"]);
    expect(isWell({ ...good, metal: undefined })).toBe(false);
  });
});
