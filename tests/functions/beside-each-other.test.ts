/** What stands in the wrong company: the sentence names the place, and what is wrong there. */
import { describe, expect, it } from "vitest";
import { call } from "./outcome";

const said = (...given: Parameters<typeof call>): string => {
  const seen = call(...given);
  return "message" in seen ? seen.message : JSON.stringify(seen.value);
};

describe("the word neutralised", () => {
  it.each(["neutralised", " Neutralized", "NEUTRALISED"])("is taken as %j, also twice", (word) => {
    expect(call("CORRECTED", [[2.4]], [[word], [null], ["neutralised"]])).toEqual({ value: 2.4 });
  });

  it.each([
    ["before it", [["neutralised"], [0.15]]],
    ["after it", [[0.15], ["neutralised"]]],
  ])("beside a figure is refused, with the word %s", (_, blanks) => {
    expect(said("CORRECTED", [[2.4]], blanks)).toMatch(/neutralised beside a figure/);
  });

  it("beside another word is not what is wrong: the other word is", () => {
    expect(said("CORRECTED", [[2.4]], [["neutralised"], ["none"]])).toMatch(
      /row 2 column 1.*"none" is neither/,
    );
  });

  it("beside a figure in a row of a record is refused, and in another row is not", () => {
    const titres = [
      [2.4, 2.45, 2.5],
      [1.1, 1.15, 1.2],
    ];
    const mixed = said("USUALSCATTER", titres, [["neutralised", 0.1], [0.1]]);
    expect(mixed).toMatch(/neutralised beside a figure/);
    expect(call("USUALSCATTER", titres, [["neutralised"], [0.1]])).toHaveProperty("value");
  });
});

describe("a titre without its sample mass", () => {
  it("is named by its row and column in a record", () => {
    const titres = [
      [2.4, 2.45, 2.5],
      [1.1, 1.15, 1.2],
    ];
    const masses = [
      [7, 7.1, 7],
      [7, 7.1, null],
    ];
    expect(said("USUALSCATTER", titres, [[0.1], [0.1]], masses)).toMatch(
      /^Row 2 column 3 has a titre but no sample mass/,
    );
  });

  it.each([
    ["MEANACIDVALUE", "sample mass", "titre", [[[2.4, null]], [[0.15]], 0.1, [[7, 7.1]]]],
    ["BLENDEDACIDVALUE", "mass", "acid value", [[[10, null]], [[100, 200]]]],
    [
      "STRENGTHON",
      "strength",
      "date",
      [[[45600, null, 45700, 45710]], [[0.1, 0.1, 0.1, 0.1]], 45700],
    ],
    ["OUTLIERS", "sample mass", "reading", [[[2.4, null, 2.5]], 0.05, null, [[7, 7.1, 7]]]],
  ] as const)(
    "is told from one that is missing: %s, a %s without %s",
    (id, filled, missing, given) => {
      expect(said(id, ...given)).toMatch(
        new RegExp(`^Row 1 column 2 has an? ${filled} but no ${missing}`),
      );
    },
  );

  it("is named where the titre stands when the masses go the other way", () => {
    const across = [[2.4, 2.5, 2.45]];
    expect(said("OUTLIERS", across, 0.05, null, [[7], [null], [7.1]])).toMatch(
      /^Row 1 column 2 has a reading but no sample mass/,
    );
  });
});

describe("a list in which nothing is filled in", () => {
  it.each([
    ["date", "STRENGTHON", [[null, null]], [[0.1, 0.1002]], 45700],
    ["strength", "STRENGTHON", [[45600, 45668]], [[null, ""]], 45700],
    ["titre", "MEANACIDVALUE", [[null]], [[0.15]], 0.1, [[10]]],
  ])("is asked for by what it is: a %s", (what, id, ...given) => {
    expect(said(id, ...given)).toMatch(new RegExp(`^No ${what} yet: `));
  });
});
