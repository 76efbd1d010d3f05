/** What holds of every act on every workbook, on files as other programs write them. */
import { describe, expect, it } from "vitest";
import { isFileProblem, type Workbook } from "../../../src/xlsx";
import { restructured } from "../../../src/xlsx/structure";
import type { LinesAct } from "../../../src/xlsx/structure/act";
import { bookMade, Dice, sheetNames } from "../../spreadsheet/structure/books";
import { opened } from "../answers";
import { partsOf } from "../files";
import { times } from "../../thorough";

const seeds = Array.from({ length: times(12) }, (_, index) => 1000 + index);

const after = (book: Workbook, act: LinesAct): Workbook | undefined => {
  const made = restructured(book, act);
  if (!isFileProblem(made)) return made;
  expect(made.fields.code).toBe("cannot-shift");
  return undefined;
};

/** What a workbook says, apart from the parts it is in. */
const said = ({ sheets, names }: Workbook) => ({
  names,
  sheets: sheets.map(({ cells, merged, tables, notes, widths, frozenRows, frozenColumns }) => ({
    cells: cells.map(({ row, column, value, formula, look, array }) => [
      row,
      column,
      value,
      formula,
      look,
      array,
    ]),
    merged,
    tables,
    notes,
    widths,
    frozenRows,
    frozenColumns,
  })),
});

interface Drawn {
  readonly axis: "rows" | "columns";
  readonly sheet: string;
  readonly at: number;
  readonly count: number;
}

function drawn(seed: number): Drawn {
  const dice = new Dice(seed);
  const axis = dice.of(["rows", "columns"] as const);
  return { axis, sheet: dice.of(sheetNames), at: dice.roll(26), count: 1 + dice.roll(4) };
}

const inserting = ({ axis, sheet, at, count }: Drawn): LinesAct => ({
  do: `insert-${axis}`,
  sheet,
  before: at,
  count,
});
const deleting = ({ axis, sheet, at, count }: Drawn): LinesAct => ({
  do: `delete-${axis}`,
  sheet,
  first: at,
  count,
});

describe("lines put in and taken out of a file", () => {
  it("leave it saying what it said, when the same are put in and taken out again", () => {
    let many = 0;
    for (const seed of seeds) {
      const book = opened(bookMade(seed));
      const there = after(book, inserting(drawn(seed)));
      const back = there && after(there, deleting(drawn(seed)));
      if (!back) continue;
      many += 1;
      expect(said(back), String(seed)).toEqual(said(book));
    }
    expect(many).toBeGreaterThan(8);
  });

  it("come to the same one by one and all at once", () => {
    let many = 0;
    for (const seed of seeds) {
      const lines = drawn(seed);
      const book = opened(bookMade(seed));
      for (const act of [inserting, deleting]) {
        const atOnce = after(book, act(lines));
        let byOne: Workbook | undefined = book;
        for (let left = lines.count; left > 0; left--) {
          byOne = byOne && after(byOne, act({ ...lines, count: 1 }));
        }
        if (!atOnce || !byOne) continue;
        many += 1;
        expect(said(byOne), String(seed)).toEqual(said(atOnce));
      }
    }
    expect(many).toBeGreaterThan(16);
  });

  it("change nothing of what was given, and no part that has nothing to do with them", () => {
    for (const seed of seeds) {
      const bytes = bookMade(seed);
      const book = opened(bytes);
      const before = said(book);
      const made = after(book, inserting({ axis: "rows", sheet: "Pier's 2", at: 3, count: 2 }));
      expect(said(book)).toEqual(before);
      expect(book.file.bytes).toBe(bytes);
      if (!made) continue;
      const [parts, now] = [partsOf(bytes), partsOf(made.file.bytes)];
      for (const part of [
        "xl/styles.xml",
        "xl/comments1.xml",
        "xl/drawings/drawing1.xml",
        "xl/drawings/boxes1.vml",
      ]) {
        expect(now[part], part).toBe(parts[part]);
      }
    }
  });
});
