import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { downloadName } from "../../../src/workbench/bar/download-name";

const then = new Date(2026, 10, 30, 14, 32);
const later = new Date(2026, 11, 1, 9, 5);

describe("the name of a workbook in the downloads", () => {
  it.each([
    ["logbook.xlsx", "logbook 2026-11-30 1432.xlsx"],
    ["weir 2025.v2.xlsm", "weir 2025.v2 2026-11-30 1432.xlsm"],
    ["logbook 2026-11-29 0801.xlsx", "logbook 2026-11-30 1432.xlsx"],
    ["logbook 2026-11-29 0801 (2).xlsx", "logbook 2026-11-30 1432.xlsx"],
    ["logbook 2026-11-29.xlsx", "logbook 2026-11-29 2026-11-30 1432.xlsx"],
    [".xlsx", ".xlsx 2026-11-30 1432"],
  ])("of %s is %s", (name, expected) => {
    expect(downloadName(name, then)).toBe(expected);
  });

  it("keeps its own name recognisable, and takes one date, however often it is saved", () => {
    const name = fc
      .string({ unit: "grapheme", minLength: 1, maxLength: 30 })
      .map((it) => `x${it}x`);
    fc.assert(
      fc.property(name, (own) => {
        const once = downloadName(`${own}.xlsx`, then);
        expect(once).toBe(`${own} 2026-11-30 1432.xlsx`);
        expect(downloadName(once, later)).toBe(`${own} 2026-12-01 0905.xlsx`);
      }),
    );
  });
});
