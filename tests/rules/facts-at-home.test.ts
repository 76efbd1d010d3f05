import { describe, expect, it } from "vitest";
import { codeOf, filesUnder } from "./sources-of";

/** Facts that stand in one file of src, and how they would be written elsewhere. */
const facts: readonly (readonly [fact: string, home: string, digits: RegExp])[] = [
  [
    "how large a sheet and how long a cell can be",
    "src/sheet/spreadsheet-limits.ts",
    /\b(1_?048_?57[56]|16_?38[34]|8_?192)\b/,
  ],
  [
    "how a spreadsheet counts days",
    "src/sheet/serial-days.ts",
    /\b(25_?569|86_?400_?000)\b|Date\.UTC\(1899, 11, 30\)/,
  ],
  ["the last day that has a number", "src/core/reference/limits.ts", /\b2_?958_?46[56]\b/],
  ["the density of methanol", "src/core/reference/liquids.ts", /\b(0\.7914|791\.4)\b/],
  // As a value: in an example it is what a person types or reads.
  [
    "the word for a solvent that has no blank",
    "src/core/titration/neutralised.ts",
    /(===|!==|[?:|=]|return)\s*["'`]neutrali[sz]ed["'`]/,
  ],
  [
    "what had been done to an oil",
    "src/core/titration/stages.ts",
    /["'`](As received|After acid step)["'`]/,
  ],
  ["the words of an amount's unit", "src/core/quantity/units.ts", /["'`](US|Imperial) gallons/],
];

/** What a person wrote or will read: samples, guides, scenarios. */
const isTold = (path: string): boolean =>
  /^src\/(help\/guides|cli\/(scenarios|samples|coverage)|workbook\/sample)\//.test(path);

describe("a fact", () => {
  it.each(facts)("stands in one place: %s", (_, home, digits) => {
    const files = filesUnder("src");
    const holds = files.filter((file) => digits.test(codeOf(file)) && !isTold(file.path));
    expect(holds.map(({ path }) => path)).toEqual([home]);
  });
});
