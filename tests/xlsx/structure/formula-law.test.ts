/**
 * A slow model of what a reference becomes: the cells it covers as a set, each moved by itself, and the
 * block around those that are left. It knows rows and columns as figures, and reads no formula.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { LinesAct } from "../../../src/xlsx/structure/act";
import { Lines } from "../../../src/xlsx/structure/lines/lines";
import { movedFormula } from "../../../src/xlsx/structure/lines/moved-formula";

interface Corner {
  readonly row: number;
  readonly column: number;
  readonly rowMark: boolean;
  readonly columnMark: boolean;
}

interface Drawn {
  readonly sheet: "" | "Log" | "Pier 2";
  readonly first: Corner;
  readonly last: Corner | undefined;
}

const letters = (column: number): string => String.fromCharCode(65 + column);
const dollar = (isMarked: boolean): string => (isMarked ? "$" : "");
const cornerText = ({ row, column, rowMark, columnMark }: Corner): string =>
  dollar(columnMark) + letters(column) + dollar(rowMark) + String(row + 1);
const sheetText = (sheet: Drawn["sheet"]): string =>
  sheet === "" ? "" : sheet === "Log" ? "Log!" : "'Pier 2'!";

const textOf = ({ sheet, first, last }: Drawn): string =>
  sheetText(sheet) + cornerText(first) + (last ? `:${cornerText(last)}` : "");

/** Where one row or column goes: counted out, one line at a time. */
function goes(line: number, act: LinesAct): number | undefined {
  if ("before" in act) return line >= act.before ? line + act.count : line;
  let passed = 0;
  for (let each = act.first; each < act.first + act.count; each++) {
    if (each === line) return undefined;
    if (each < line) passed += 1;
  }
  return line - passed;
}

function model(drawn: Drawn, act: LinesAct, home: string): string {
  if ((drawn.sheet || home) !== act.sheet) return textOf(drawn);
  const { first } = drawn;
  const last = drawn.last ?? first;
  const isRows = act.do.endsWith("rows");
  const covered: (readonly [number, number])[] = [];
  for (let row = first.row; row <= last.row; row++) {
    for (let column = first.column; column <= last.column; column++) {
      const now = goes(isRows ? row : column, act);
      if (now !== undefined) covered.push(isRows ? [now, column] : [row, now]);
    }
  }
  if (covered.length === 0) return "#REF!";
  const rows = covered.map(([row]) => row);
  const columns = covered.map(([, column]) => column);
  return textOf({
    sheet: drawn.sheet,
    first: { ...first, row: Math.min(...rows), column: Math.min(...columns) },
    last: drawn.last && {
      ...drawn.last,
      row: Math.max(...rows),
      column: Math.max(...columns),
    },
  });
}

const line = fc.integer({ min: 0, max: 11 });
const corner = fc.record({
  row: line,
  column: line,
  rowMark: fc.boolean(),
  columnMark: fc.boolean(),
});
const drawn: fc.Arbitrary<Drawn> = fc
  .record({
    sheet: fc.constantFrom("" as const, "Log" as const, "Pier 2" as const),
    first: corner,
    last: fc.option(corner, { nil: undefined }),
  })
  .map((each) => {
    const { first, last } = each;
    if (!last) return each;
    const [top, bottom] = [first.row, last.row].sort((a, b) => a - b) as [number, number];
    const [left, right] = [first.column, last.column].sort((a, b) => a - b) as [number, number];
    return {
      ...each,
      first: { ...first, row: top, column: left },
      last: { ...last, row: bottom, column: right },
    };
  });

const act: fc.Arbitrary<LinesAct> = fc
  .record({
    kind: fc.constantFrom("insert-rows", "insert-columns", "delete-rows", "delete-columns"),
    sheet: fc.constantFrom("Log", "Pier 2"),
    at: line,
    count: fc.integer({ min: 1, max: 5 }),
  })
  .map(({ kind, sheet, at, count }) =>
    kind === "insert-rows" || kind === "insert-columns"
      ? { do: kind, sheet, before: at, count }
      : { do: kind as "delete-rows" | "delete-columns", sheet, first: at, count },
  );

/** What may stand around references, as a person or a program writes it; none of it may change. */
const around = fc.constantFrom(
  ["SUM(", ")", "+1"],
  ["IF(", ",", '"A1:B2 in a text")'],
  ["-( ", " ) & ", "Titrant[[#This Row],[Lot]]"],
  ["_xldudf_TITRE_DOSE(", ", 2.5)+", "Log_A1*Rate"],
  ["SUMPRODUCT((", ">0)*{1,2;3,4})-", "SUM('Log:Pier 2'!A1:B9)"],
  ["[2]!_xldudf_TITRE_DOSE(", ")%^2+", "'[1]Log'!A5"],
);

describe("a formula moved with the rows and columns it refers to", () => {
  it("refers to the very cells it referred to, wherever they are now", () => {
    fc.assert(
      fc.property(
        drawn,
        act,
        around,
        fc.constantFrom("Log", "Pier 2"),
        (one, done, parts, home) => {
          const [before = "", between = "", after = ""] = parts;
          const formula = before + textOf(one) + between + after;
          const wanted = before + model(one, done, home) + between + after;
          expect(movedFormula(formula, home, new Lines(done))).toBe(wanted);
        },
      ),
      { numRuns: 600 },
    );
  });

  it("comes back when lines that were put in are taken out again", () => {
    fc.assert(
      fc.property(drawn, act, (one, done) => {
        if (!("before" in done)) return;
        const taken = done.do === "insert-rows" ? "delete-rows" : "delete-columns";
        const back = {
          do: taken,
          sheet: done.sheet,
          first: done.before,
          count: done.count,
        } as const;
        const there = movedFormula(textOf(one), "Log", new Lines(done)) ?? "";
        expect(movedFormula(there, "Log", new Lines(back))).toBe(textOf(one));
      }),
    );
  });

  it("is the same whether lines go one by one or all at once", () => {
    fc.assert(
      fc.property(drawn, act, (one, done) => {
        if ("before" in done) return;
        const lines = new Lines(done);
        let byOne = textOf(one);
        for (let left = done.count; left > 0; left--) {
          byOne = movedFormula(byOne, "Log", new Lines({ ...done, count: 1 })) ?? "";
        }
        expect(byOne).toBe(movedFormula(textOf(one), "Log", lines));
      }),
    );
  });
});

const rows = (kind: "insert" | "delete", at: number, count: number): Lines =>
  new Lines(
    kind === "insert"
      ? { do: "insert-rows", sheet: "Log", before: at, count }
      : { do: "delete-rows", sheet: "Log", first: at, count },
  );

describe("by hand", () => {
  it.each([
    // whole columns and all rows of the sheet stay what they are
    ["SUM(A:C)", rows("insert", 3, 2), "SUM(A:C)"],
    ["SUM($A$1:$A$1048576)", rows("delete", 3, 2), "SUM($A$1:$A$1048576)"],
    ["SUM(3:$5)", rows("insert", 3, 2), "SUM(3:$7)"],
    ["SUM(3:5)", rows("delete", 2, 3), "SUM(#REF!)"],
    ["SUM(A9:A2)", rows("delete", 0, 3), "SUM(A6:A1)"],
    ["SUM(A1 : A9)", rows("insert", 4, 1), "SUM(A1:A10)"],
    ["_xlfn.ANCHORARRAY(H2)", rows("insert", 0, 1), "_xlfn.ANCHORARRAY(H3)"],
    ["INDEX(A2:A9,2):B5", rows("insert", 3, 1), "INDEX(A2:A10,2):B6"],
    ["Log!A5,Log!C5", rows("insert", 0, 1), "Log!A6,Log!C6"],
    ["log:LOG!A5", rows("insert", 0, 1), "log:LOG!A6"],
    ["SUM(Log:Pier!A5)", rows("insert", 0, 1), "SUM(Log:Pier!A5)"],
    ["A1048576", rows("insert", 0, 1), "#REF!"],
    ["SUM(A5:A1048576)", rows("insert", 0, 1), "SUM(A6:A1048576)"],
    ["'It''s!A1'!A5+Log!A5", rows("delete", 0, 1), "'It''s!A1'!A5+Log!A4"],
  ])("%s", (formula, lines, wanted) => {
    expect(movedFormula(formula, "Log", lines)).toBe(wanted);
  });

  it("says nothing of a formula that cannot be read", () => {
    expect(movedFormula("SUM(A1", "Log", rows("insert", 0, 1))).toBeUndefined();
  });
});
