/** What formulas read is kept from change to change: nothing may come of that but speed. */
import fc from "fast-check";
import { IDependencyManagerService } from "@univerjs/engine-formula";
import { describe, expect, it, vi } from "vitest";
import type { HeadlessWorkbook } from "../../src/workbench/engine/headless";
import { openHeadless } from "../../src/workbench/engine/node";
import type { Book, BookCell } from "../../src/sheet/book";
import { bookOf, shownAt, withBook } from "./book";
import { times } from "../thorough";

type Content = number | string;
type Row = readonly [Content, Content, Content, Content];

const names = ["Log", "Other"];
const figure = fc.integer({ min: 1, max: 9 });

/** Of the figures in A and B: a cell, a block, another sheet, a place that is worked out, a column. */
const first = fc.constantFrom(
  "=A1+1",
  "=SUM(A1:B2)",
  "=TITRE.CORRECTED(A1:A3,0.1)",
  "=IF(Other!A1>4,Log!A2,B1)",
  "=SUM(Other!A1:B3)",
  "=OFFSET(A1,1,0)*2",
  "=INDEX(A1:B3,2,1)",
  "=SUM($A:$A)",
);
/** Of what is in C. */
const second = fc.constantFrom("=C1*2", "=SUM(C1:C3)", "=Log!C1+Other!C2", "=SUM(Log!$C$1:$C$2)");

const row = fc.tuple(figure, figure, fc.oneof(figure, first), fc.oneof(figure, second));
const sheet = fc.array(row, { minLength: 3, maxLength: 3 });
const place = { sheet: fc.nat({ max: 1 }), row: fc.nat({ max: 2 }) };
const edit = fc.oneof(
  fc.record({ ...place, column: fc.nat({ max: 1 }), content: figure as fc.Arbitrary<Content> }),
  fc.record({ ...place, column: fc.constant(2), content: fc.oneof(figure, first) }),
  fc.record({ ...place, column: fc.constant(3), content: fc.oneof(figure, second) }),
);

const cellOf = (content: Content): BookCell =>
  typeof content === "string" ? { formula: content } : { value: content };

const twoSheets = (sheets: readonly (readonly Row[])[]): Book => ({
  name: "remembering",
  sheets: sheets.map((rows, at) => ({
    name: names[at] ?? "",
    rows: rows.map((contents) => contents.map(cellOf)),
    columnWidths: [],
    tables: [],
    frozenRows: 0,
  })),
});

const valuesOf = (workbook: HeadlessWorkbook) =>
  names.map((name) =>
    Array.from({ length: 12 }, (_, at) =>
      workbook.value({ sheet: name, row: Math.floor(at / 4), column: at % 4 }),
    ),
  );

async function valuesOnOpening(book: Book) {
  const workbook = await openHeadless(book);
  const values = valuesOf(workbook);
  workbook.close();
  return values;
}

describe("what formulas read, kept from change to change", () => {
  it("leaves in every cell what stands there when the workbook is opened anew", () =>
    fc.assert(
      fc.asyncProperty(
        fc.tuple(sheet, sheet),
        fc.array(edit, { minLength: 1, maxLength: 6 }),
        async (sheets, edits) => {
          const workbook = await openHeadless(twoSheets(sheets));
          const now = sheets.map((rows) => rows.map((contents): Content[] => [...contents]));
          for (const { sheet: at, row: of, column, content } of edits) {
            const typed = { sheet: names[at] ?? "", row: of, column };
            await workbook.type(typed, [[content]]);
            const cells = now[at]?.[of];
            if (cells) cells[column] = content;
          }
          const values = valuesOf(workbook);
          workbook.close();
          expect(values).toEqual(await valuesOnOpening(twoSheets(now as unknown as Row[][])));
        },
      ),
      { numRuns: times(10) },
    ));

  it("adds nothing to what the engine knows when a figure is typed", () =>
    withBook(bookOf([[2.4, 2.5, "=TITRE.CORRECTED(A1:B1)", "=C1*2"]]), async (workbook) => {
      const index = workbook.injector.get(IDependencyManagerService);
      const added = vi.spyOn(index, "addDependencyRTreeCache");
      await workbook.type({ sheet: "Sheet", row: 0, column: 0 }, [[2.6]]);
      expect(added).not.toHaveBeenCalled();
      expect(shownAt(workbook, "D1")).toBe(5.1);
      await workbook.type({ sheet: "Sheet", row: 0, column: 3 }, [["=SUM(A1:C1)"]]);
      // the formula that was written, and nothing else
      expect(added).toHaveBeenCalledTimes(1);
    }));
});
