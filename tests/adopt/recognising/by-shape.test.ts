/** Columns under headings of which nobody knows a word: words are drawn from letters, not from any list. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { recogniseSheet } from "../../../src/adopt/recognising/recognise";
import { sureFrom } from "../../../src/adopt/recognising/sure";
import type { LogbookValue } from "../../../src/adopt/recognising/sheet-cells";
import { sheetOf } from "../../taskpane/logbook/typed-pane";
import { times } from "../../thorough";

/** No language has such words. */
const word = fc
  .array(fc.constantFrom("q", "x", "zw", "vk", "jq", "u", "o"), { minLength: 5, maxLength: 8 })
  .map((parts) => parts.join(""));

const titres = fc.array(
  fc.integer({ min: 90, max: 900 }).map((each) => each / 100),
  {
    minLength: 6,
    maxLength: 9,
  },
);

const guessed = (headings: readonly string[], rows: readonly (readonly LogbookValue[])[]) =>
  recogniseSheet(sheetOf([headings, ...rows]))[0]?.columns ?? [];

describe("a column under a heading that nobody knows", () => {
  it("is a titre where several are numbered and hold readings, and is not called sure", () => {
    fc.assert(
      fc.property(word, titres, (unknown, read) => {
        const columns = guessed(
          ["Date", "Lot", `${unknown} 1 mL`, `${unknown} 2 mL`, "Blank mL", "Sample g"],
          read.map((each, at) => [46100 + at, `NQ-${String(at)}`, each, each + 0.04, 0.15, 10.1]),
        );
        expect(columns.slice(2, 4).map(({ role }) => role)).toEqual(["titre", "titre"]);
        expect(columns.slice(2, 4).every(({ score }) => score < sureFrom)).toBe(true);
      }),
      { numRuns: times(12) },
    );
  });

  it("is the number of the row, or the batch, where its cells can be nothing else", () => {
    fc.assert(
      fc.property(word, word, titres, (first, second, read) => {
        fc.pre(first !== second);
        const columns = guessed(
          [first, second, "Lot", "FFA %", "Oil L", "KOH total g"],
          read.map((each, at) => [
            at + 1,
            `M${String(at + 40)}`,
            `NQ-${String(at)}`,
            each,
            90,
            800,
          ]),
        );
        expect(columns.slice(0, 2).map(({ role }) => role)).toEqual(["number", "batch"]);
      }),
      { numRuns: times(12) },
    );
  });

  it("is a temperature where its unit is one", () => {
    fc.assert(
      fc.property(word, (unknown) => {
        const columns = guessed(
          ["Batch", "Oil L", "FFA %", `${unknown} (°C)`],
          [52, 55, 57, 60, 54].map((each, at) => [`B${String(at)}`, 90 + at, 2 + at / 10, each]),
        );
        expect(columns[3]?.role).toBe("temperature");
      }),
      { numRuns: times(12) },
    );
  });

  it.each([
    ["Dose per litre [g/L]", "catalystRate"],
    ["Fettsäuren frei (%)", "ffa"],
    ["Sp. gr.", "density"],
  ])("“%s” is read as a heading in other words of its kind is", (heading, role) => {
    const columns = guessed(
      ["Batch", "Oil L", heading],
      [0.91, 0.92, 0.915, 0.918].map((each, at) => [
        `B${String(at)}`,
        90 + at,
        each * (role === "catalystRate" ? 9 : 1),
      ]),
    );
    expect(columns[2]?.role).toBe(role);
  });
});
