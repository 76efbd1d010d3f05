/** An empty cell that was looked up: one program shows 0, another nothing, and all the rest agrees. */
import { describe, expect, it } from "vitest";
import { openHeadless } from "../../src/workbench/engine/node";
import { bookOf } from "./book";

const doubted = [
  "=VLOOKUP(3,A1:B3,2,FALSE)",
  "=HLOOKUP(3,C1:D2,2,FALSE)",
  "=LOOKUP(3,A1:A3,B1:B3)",
  "=IF(TRUE,VLOOKUP(3,A1:B3,2,FALSE),1)",
];
const sure = [
  '=IF(VLOOKUP(3,A1:B3,2,FALSE)="","none",1)',
  "=VLOOKUP(3,A1:B3,2,FALSE)+1",
  "=VLOOKUP(2,A1:B3,2,FALSE)",
  "=INDEX(B1:B3,3)",
  "=B3",
];

describe("an empty cell that is looked up", () => {
  it("makes a formula doubtful that comes to nothing else, and no other", async () => {
    const first = [1, 7, 2, 3].slice(0, 4);
    const book = await openHeadless(
      bookOf([first, [2, 8], [3, null], ...[...doubted, ...sure].map((formula) => [formula])]),
    );
    try {
      const { unit } = book.cells.names;
      const sheet = book.cells.names.sheetId("Sheet");
      const found = [...doubted, ...sure].filter((_, at) =>
        book.working.doubts.isDoubtful({ unit, sheet, row: 3 + at, column: 0 }),
      );
      expect(found).toEqual(doubted);
    } finally {
      book.close();
    }
  });
});
