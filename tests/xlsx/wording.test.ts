import { describe, expect, it } from "vitest";
import { sayFile } from "../../src/xlsx";
import { FileProblem } from "../../src/xlsx/problem";
import type { FileProblemFields } from "../../src/xlsx/sentences";
import { shiftTroubles } from "../../src/xlsx/structure/lines/trouble";

const long = "A name that somebody made as long as a name can be and then went on for longer";
const cell = "'A sheet with thirty-one characters'!XFD1048576";
const area = "XFC1048575:XFD1048576";

/** One of each, with the longest words it can hold. */
const each: { [Code in FileProblemFields["code"]]: Extract<FileProblemFields, { code: Code }> } = {
  "not-a-workbook": { code: "not-a-workbook" },
  encrypted: { code: "encrypted" },
  "old-format": { code: "old-format" },
  "binary-format": { code: "binary-format" },
  "strict-format": { code: "strict-format" },
  "other-format": { code: "other-format", found: "an OpenDocument file" },
  damaged: { code: "damaged", part: long, detail: `${long}${long}` },
  "unsafe-name": { code: "unsafe-name", name: long },
  "repeated-name": { code: "repeated-name", name: long },
  "too-large": { code: "too-large" },
  "too-many-cells": { code: "too-many-cells" },
  "packed-to-harm": { code: "packed-to-harm", part: long },
  "declares-entities": { code: "declares-entities", part: long },
  "other-encoding": { code: "other-encoding", part: long, encoding: "ISO-8859-1" },
  "no-sheet": { code: "no-sheet", name: long },
  "no-cells": { code: "no-cells", sheet: long },
  "outside-sheet": { code: "outside-sheet", cell },
  "rows-out-of-order": { code: "rows-out-of-order", sheet: long },
  "in-merged-cells": { code: "in-merged-cells", cell, area },
  "in-array": { code: "in-array", cell, area },
  "not-empty": { code: "not-empty", cell, wanted: `the answer of ${cell}` },
  "no-formula": { code: "no-formula", cell },
  "not-as-meant": { code: "not-as-meant", place: "Log!C2" },
  "not-read-back": { code: "not-read-back" },
  "broken-formula": {
    code: "broken-formula",
    cell,
    sentence:
      'The formula cannot be read at character 8192, "some text of forty characters and some …": a value, a reference or a function should stand there.',
  },
  "not-a-number": { code: "not-a-number", cell },
  "text-too-long": { code: "text-too-long", cell },
  "not-a-date": { code: "not-a-date", cell, given: long },
  "bad-name": { code: "bad-name", kind: "defined", name: long },
  "name-taken": { code: "name-taken", name: long },
  "no-table": { code: "no-table", name: long },
  "table-area": { code: "table-area", table: long, area, trouble: "too-small" },
  "bad-heading": { code: "bad-heading", table: long, heading: long, trouble: "too-long" },
  "heading-cell": { code: "heading-cell", cell, table: long },
  "bad-length": { code: "bad-length", table: long, given: 1_000_000, needed: 1_000_000 },
  "bad-width": { code: "bad-width", given: 300 },
  "bad-height": { code: "bad-height", given: 500 },
  "note-there": { code: "note-there", cell },
  "filter-there": { code: "filter-there", sheet: "Log", area: "A1:C9" },
  "choice-there": { code: "choice-there", cell },
  "choice-too-long": { code: "choice-too-long", cell },
  "frozen-already": { code: "frozen-already", sheet: long },
  "sheets-locked": { code: "sheets-locked" },
  "last-sheet": { code: "last-sheet", sheet: long },
  "not-taken-along": { code: "not-taken-along", sheet: long, what: long },
  "ends-a-range": { code: "ends-a-range", sheet: long },
  "unknown-reference": { code: "unknown-reference", part: long },
  "unreadable-formula": { code: "unreadable-formula" },
  "too-many-styles": { code: "too-many-styles" },
  "cannot-shift": { code: "cannot-shift", sheet: long, place: cell, trouble: "protected" },
  failed: { code: "failed", detail: long },
};

const shifts = Object.keys(shiftTroubles).map((trouble) => ({
  code: "cannot-shift" as const,
  sheet: long,
  place: cell + long,
  trouble: trouble as keyof typeof shiftTroubles,
}));

describe("what is said about a file", () => {
  it.each([...Object.values(each), ...shifts])(
    "is one sentence of 6 to 200 characters: $code",
    (fields) => {
      const sentence = sayFile(new FileProblem(fields));
      expect(sentence).toMatch(/^['A-Z].*\.$/);
      expect(sentence.length).toBeGreaterThanOrEqual(6);
      expect(sentence.length).toBeLessThanOrEqual(200);
    },
  );
});
