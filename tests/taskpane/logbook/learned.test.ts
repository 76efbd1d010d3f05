/** What was agreed of one workbook, as it is used for another under the same headings. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { withAnswer } from "../../../src/adopt/recognising/answers";
import { withBasis } from "../../../src/adopt/recognising/basis";
import { withColumn, withConstant } from "../../../src/adopt/recognising/mapping";
import { recogniseSheet } from "../../../src/adopt/recognising/recognise";
import type { SheetCells } from "../../../src/adopt/recognising/sheet-cells";
import { foundTable, type FoundTable } from "../../../src/taskpane/logbook/found-table";
import { asLearned, learnedIn, withAgreed } from "../../../src/taskpane/logbook/learned";
import { firstState, reduce, shownTable } from "../../../src/taskpane/logbook/state";
import { makeLogbook } from "../../adopt/recognising/logbooks";

const readIn = (cells: SheetCells) =>
  recogniseSheet(cells).map((guess) => ({ guess, cells, remembered: undefined }));

/** The same logbook in another workbook: on another sheet, further down and to the right. */
const elsewhere = (cells: SheetCells, rows: number, columns: number): SheetCells => ({
  ...cells,
  sheet: "Book two",
  row: cells.row + rows,
  column: cells.column + columns,
});

const throughStorage = (tables: readonly FoundTable[]) =>
  learnedIn(JSON.parse(JSON.stringify(withAgreed([], tables))));

const constantsOf = ({ mapping }: FoundTable) =>
  mapping.constants.map(({ role, unit, basis, from }) => [role, unit, basis, from.kind]);

const rolesOf = ({ mapping }: FoundTable) =>
  mapping.columns.map(({ heading, role, unit, basis }) => [heading, role, unit, basis]);

/** As a person puts it right: what was said to be a reading is a note, the drums hold 205 L. */
function putRight(table: FoundTable): FoundTable {
  const first = table.mapping.columns[1]?.column ?? 0;
  const noted = withColumn(table.mapping, first, "note");
  const typed = withConstant(noted, "density", "0.92");
  const based = withBasis(withBasis(typed, "baseCharge", "as weighed"), "strength", "pure");
  const mapping = withAnswer(based, { ask: "unit", word: "drum", litres: "205" });
  return { ...table, mapping, isAgreed: true };
}

const layouts = fc.integer({ min: 0, max: 11 });
const far = fc.integer({ min: 0, max: 5 });

describe("a logbook under headings that were agreed to before", () => {
  it("is read whole as that one was, wherever it stands, and is not agreed to by itself", () => {
    fc.assert(
      fc.property(layouts, far, far, (layout, rows, columns) => {
        const { cells } = makeLogbook(layout, "all", 1);
        const agreed = readIn(cells).map(foundTable).map(putRight);
        const known = throughStorage(agreed);
        const others = readIn(elsewhere(cells, rows, columns)).map((each) =>
          asLearned(each, known),
        );
        expect(others.map(foundTable).map(rolesOf)).toEqual(agreed.map(rolesOf));
        expect(others.map(foundTable).map(constantsOf)).toEqual(agreed.map(constantsOf));
        for (const [at, table] of others.map(foundTable).entries()) {
          expect(table.isAgreed).toBe(false);
          expect(table.learned).toBe(agreed[at]?.mapping.sheet);
          expect(table.mapping.columns.map(({ column }) => column)).toEqual(
            table.guess.columns.map(({ column }) => column),
          );
          expect(table.mapping.answers).toEqual(agreed[at]?.mapping.answers);
          expect(table.mapping.sheet).toBe("Book two");
        }
      }),
      { numRuns: 24 },
    );
  });

  it("is read afresh at a press, as if nothing had been learned", () => {
    const { cells } = makeLogbook(0, "all", 1);
    const known = throughStorage(readIn(cells).map(foundTable).map(putRight));
    const tables = readIn(elsewhere(cells, 2, 1)).map((each) => asLearned(each, known));
    const state = reduce(firstState, { do: "found", tables });
    const plain = reduce(firstState, { do: "found", tables: readIn(elsewhere(cells, 2, 1)) });
    expect(shownTable(state)?.mapping).not.toEqual(shownTable(plain)?.mapping);
    expect(shownTable(reduce(state, { do: "afresh" }))).toEqual(shownTable(plain));
  });

  it("is left alone where a heading differs, or where its own workbook remembers it", () => {
    const { cells } = makeLogbook(0, "all", 1);
    const [agreed] = readIn(cells).map(foundTable).map(putRight);
    if (!agreed) throw new Error("no table was found");
    const known = throughStorage([agreed]);
    const [read] = readIn(cells);
    if (!read) throw new Error("no table was found");
    const own = { ...read, remembered: foundTable(read).mapping };
    expect(asLearned(own, known)).toBe(own);
    const columns = read.guess.columns.map((each, at) =>
      at === 2 ? { ...each, heading: `${each.heading} 2` } : each,
    );
    const other = { ...read, guess: { ...read.guess, columns } };
    expect(asLearned(other, known)).toBe(other);
  });
});

describe("what a browser kept", () => {
  it("is believed only as far as it is what is kept: the rest changes nothing", () => {
    const { cells } = makeLogbook(0, "all", 1);
    const tables = readIn(cells);
    const headings = throughStorage(tables.map(foundTable)).map((each) => each.headings);
    fc.assert(
      fc.property(fc.jsonValue(), fc.constantFrom("", ...headings), (rubbish, heading) => {
        const known = learnedIn([rubbish, { headings: heading, sheet: "Log", rows: rubbish }]);
        expect(learnedIn(rubbish).length).toBeLessThanOrEqual(
          Array.isArray(rubbish) ? rubbish.length : 0,
        );
        for (const table of tables) {
          const read = foundTable(asLearned(table, known));
          expect(read.mapping.columns).toHaveLength(table.guess.columns.length);
        }
      }),
      { numRuns: 60 },
    );
  });

  it("holds 24 logbooks at most, and one of each headings: the latest", () => {
    const { cells } = makeLogbook(0, "all", 1);
    const [first] = readIn(cells).map(foundTable);
    if (!first) throw new Error("no table was found");
    const named = (at: number): FoundTable => {
      const columns = first.guess.columns.map((each) => ({
        ...each,
        heading: `${each.heading}${String(at)}`,
      }));
      return { ...first, guess: { ...first.guess, columns } };
    };
    const many = Array.from({ length: 30 }, (_, at) => withAgreed([], [named(at)])).flat();
    expect(withAgreed(many, [])).toHaveLength(24);
    const again = withAgreed(withAgreed([], [first]), [putRight(first)]);
    expect(again).toHaveLength(1);
    expect(JSON.stringify(again)).toContain("205");
  });
});
