/** Sentences that say one thing or another, each way typed by hand. */
import { describe, expect, it } from "vitest";
import { exact } from "../../../src/core/exact/exact";
import { problem } from "../../../src/core/problem/problem";
import { quoted } from "../../../src/core/problem/quoted";
import type { ProblemFields } from "../../../src/core/problem/sentences";
import { say } from "../../../src/core/problem/wording";
import { quantity } from "../../../src/core/quantity/quantity";

const place = { row: 2, column: 3 };
const few = { code: "too-few", argument: "titres", called: "titre", needed: 2 } as const;
const range = {
  code: "out-of-range",
  argument: "mass",
  given: exact("12.5"),
  unit: "g",
  allowed: "above 0, up to 10 g",
  hint: "",
  place: undefined,
} as const;
const unpaired = {
  code: "unpaired",
  missing: "sample mass",
  advice: "each needs the other",
  place,
} as const;
const broken = { code: "broken-formula", at: 7, trouble: "stray", found: "" } as const;
const acid = { code: "too-much-acid", given: exact("412.3"), limit: exact(400) } as const;

const sentences: readonly (readonly [ProblemFields, string])[] = [
  [{ ...few, given: 0 }, "Not enough data yet: titres has 0 titres, and 2 or more are needed."],
  [{ ...few, given: 1 }, "Not enough data yet: titres has 1 titre, and 2 or more are needed."],
  [range, "mass is 12.5 g; allowed is above 0, up to 10 g."],
  [{ ...range, unit: "" }, "mass is 12.5; allowed is above 0, up to 10 g."],
  [
    { ...range, place, hint: "in grams" },
    "mass, row 2 column 3, is 12.5 g; allowed is above 0, up to 10 g (in grams).",
  ],
  [
    { ...unpaired, filled: "titre" },
    "Row 2 column 3 has a titre but no sample mass: each needs the other.",
  ],
  [
    { ...unpaired, filled: "acid value" },
    "Row 2 column 3 has an acid value but no sample mass: each needs the other.",
  ],
  [broken, "The formula cannot be read at character 7: it does not belong there."],
  [
    { ...broken, found: ")" },
    'The formula cannot be read at character 7, ")": it does not belong there.',
  ],
  [
    { ...acid, quantity: "acid value" },
    "The acid value comes to 410 mg KOH/g, above 400: check sample mass and titrant strength.",
  ],
  [
    { code: "too-much-acid", quantity: "FFA", given: exact("100.2"), limit: exact(100) },
    "The FFA comes to 100.2 %, above 100: check sample mass and titrant strength.",
  ],
  [
    { code: "no-strength-left", strength: exact("-0.012345") },
    "The line comes to -0.01235 mol/L on that day, which cannot be: ask for a day nearer to the dates.",
  ],
  [
    {
      code: "no-triglyceride-left",
      acidValue: quantity("mg KOH/g", "210"),
      limit: exact("198.606"),
    },
    "acidValue is 210; above 198.6 no triglyceride is left to react with methanol.",
  ],
];

describe("a sentence about a problem", () => {
  it.each(sentences)("says what is so of %j", (fields, sentence) => {
    expect(say(problem(fields))).toBe(sentence);
  });

  it("quotes a text in one line, up to 40 characters of it", () => {
    expect(quoted(" two \n words\t")).toBe('"two words"');
    expect(quoted("x".repeat(40))).toBe(`"${"x".repeat(40)}"`);
    expect(quoted("x".repeat(41))).toBe(`"${"x".repeat(40)}…"`);
  });
});
