/** Which kept workbooks are believed, given up, replaced; what is said of them. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  entriesFrom,
  type Entry,
  entryFrom,
  mostKept,
  replacedBy,
  surplus,
} from "../../../src/workbench/keeping/entry";
import { fileFrom } from "../../../src/workbench/keeping/file-on-disk";
import { notKeptWords } from "../../../src/workbench/keeping/not-kept-words";
import { standingOf, standingWords } from "../../../src/workbench/keeping/standing";
import { remembered } from "../../../src/workbench/keeping/tab-memory";
import { untilKept } from "../../../src/workbench/keeping/when";
import { sizeWords, timeWords } from "../../../src/workbench/keeping/when-words";

const entry: fc.Arbitrary<Entry> = fc.record({
  id: fc.uuid(),
  name: fc.constantFrom("logbook.xlsx", "weir.xlsx", "__proto__", "."),
  drafts: fc.constantFrom("", "file/weir.xlsx", "new/1"),
  keptAt: fc.nat(),
  size: fc.nat(),
  isInFile: fc.boolean(),
  isSample: fc.boolean(),
});
const shelf = fc.uniqueArray(entry, { selector: ({ id }) => id, maxLength: 14 });

describe("workbooks that the browser keeps", () => {
  it("are read back as they were put down", () => {
    fc.assert(
      fc.property(entry, (given) => {
        expect(entryFrom(structuredClone(given))).toEqual(given);
      }),
    );
  });

  it("are believed part by part, whatever is there instead", () => {
    fc.assert(
      fc.property(
        fc.anything(),
        fc.constantFrom("id", "name", "keptAt", "size", "place", "disk"),
        (odd, part) => {
          const sound = {
            id: "a",
            name: "b",
            keptAt: 1,
            size: 2,
            isInFile: false,
            isSample: false,
          };
          for (const found of entriesFrom([odd, { ...sound, [part]: odd }])) {
            expect(found.id).not.toBe("");
            expect(Number.isSafeInteger(found.keptAt) && Number.isSafeInteger(found.size)).toBe(
              true,
            );
            expect(timeWords(found.keptAt)).not.toBe("");
          }
          expect(fileFrom(odd)).toBeUndefined();
        },
      ),
    );
  });

  it("are given up from the oldest, never what is in no file or open, and no more than there are too many", () => {
    fc.assert(
      fc.property(shelf, fc.nat(), (entries, at) => {
        const open = entries[at % Math.max(1, entries.length)]?.id ?? "";
        const gone = surplus(entries, open);
        const left = entries.filter(({ id }) => !gone.some((each) => each.id === id));
        expect(gone.every(({ id, isInFile }) => isInFile && id !== open)).toBe(true);
        expect(left.length).toBeGreaterThanOrEqual(Math.min(mostKept, entries.length));
        // what is left beyond the five is there for a reason
        const latest = [...entries].sort((a, b) => b.keptAt - a.keptAt).slice(0, mostKept);
        for (const each of left) {
          if (!latest.some(({ id }) => id === each.id))
            expect(!each.isInFile || each.id === open).toBe(true);
        }
      }),
    );
  });

  it("make room for the same file opened again, unless they hold what no file has", () => {
    const sound = {
      id: "a",
      name: "weir.xlsx",
      drafts: "file/weir.xlsx",
      keptAt: 1,
      size: 2,
      isSample: false,
    };
    expect(replacedBy([{ ...sound, isInFile: true }], "weir.xlsx")?.id).toBe("a");
    expect(replacedBy([{ ...sound, isInFile: false }], "weir.xlsx")).toBeUndefined();
    expect(replacedBy([{ ...sound, isInFile: true }], "Weir.xlsx")).toBeUndefined();
  });

  it("are told by a day, a time and a size", () => {
    expect(timeWords(new Date(2026, 10, 30, 14, 32).getTime())).toBe("30 November 2026 at 14:32");
    expect([0, 999, 45_400, 2_340_000].map(sizeWords)).toEqual(["1 kB", "1 kB", "45 kB", "2.3 MB"]);
  });
});

describe("the bar", () => {
  it("claims no more than there is", () => {
    const known = fc.record({
      isInFile: fc.boolean(),
      isNew: fc.boolean(),
      isEdited: fc.boolean(),
      isKept: fc.boolean(),
    });
    fc.assert(
      fc.property(known, (given) => {
        const standing = standingOf(given);
        if (standing === "in file") expect(given.isInFile && !given.isEdited).toBe(true);
        if (standing === "kept") expect(given.isKept).toBe(true);
        if (standing === "untouched") expect(given.isNew && !given.isEdited).toBe(true);
        if (given.isEdited && !given.isKept) expect(standingWords(standing)).toBe("not kept yet");
      }),
    );
  });
});

describe("the pause before a workbook is kept", () => {
  it("is two seconds after the last edit, and twenty after the first at the most", () => {
    expect(untilKept({ first: 0, last: 0, took: 0 }, 0)).toBe(2_000);
    expect(untilKept({ first: 0, last: 1_500, took: 0 }, 1_600)).toBe(1_900);
    expect(untilKept({ first: 0, last: 19_500, took: 0 }, 19_600)).toBe(400);
    expect(untilKept({ first: 0, last: 1, took: 0 }, 30_000)).toBe(0);
  });

  it("grows with the time that keeping takes, and is never longer than a minute", () => {
    expect(untilKept({ first: 0, last: 0, took: 3_000 }, 0)).toBe(15_000);
    expect(untilKept({ first: 0, last: 0, took: 90_000 }, 0)).toBe(60_000);
  });
});

describe("what a tab remembers", () => {
  it("is nothing where it cannot be read", () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
        const found = remembered(text);
        expect(found === undefined || typeof found.id === "string").toBe(true);
      }),
    );
    expect(remembered(null)).toBeUndefined();
    const where = { sheet: "Log", row: 3, column: 2 };
    expect(remembered(JSON.stringify({ id: "a", place: where, isOpening: true }))).toEqual({
      id: "a",
      place: where,
      isOpening: true,
    });
  });
});

describe("a browser that keeps nothing", () => {
  it("is told apart from one that has no room", () => {
    const full = new DOMException("", "QuotaExceededError");
    expect(notKeptWords("weir.xlsx", full)).toContain("no more room");
    expect(notKeptWords("weir.xlsx", new TypeError("x"))).toContain("keeps nothing");
    expect(notKeptWords("weir.xlsx", undefined)).toContain("Save it in a file");
  });
});
