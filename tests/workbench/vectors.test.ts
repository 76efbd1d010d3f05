import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { HeadlessWorkbook } from "../../src/workbench/engine/headless";
import { openHeadless } from "../../src/workbench/engine/node";
import { constantFormula, isConstant, known, rowsEach, type Vector, vectorBook } from "./vectors";

let workbook: HeadlessWorkbook;

/** The answer as it stands in the cells, in the shape that is expected. */
function answerAt(row: number, shape: unknown): unknown {
  const value = (down: number, across: number) =>
    workbook.value({ sheet: "Answers", row: row + down, column: across });
  return Array.isArray(shape)
    ? shape.map((cells: unknown[], down) => cells.map((_, across) => value(down, across)))
    : value(0, 0);
}

function expectAgreement(answer: unknown, { expect: expected, within }: Vector): void {
  if (typeof expected === "number") {
    expect(answer).toBeTypeOf("number");
    expect(Math.abs((answer as number) / expected - 1)).toBeLessThanOrEqual(within);
  } else if (Array.isArray(expected)) {
    for (const [row, cells] of (expected as unknown[][]).entries()) {
      for (const [column, cell] of cells.entries()) {
        const found = (answer as unknown[][])[row]?.[column];
        expectAgreement(found, { expect: cell, within } as Vector);
      }
    }
  } else if (typeof expected === "object" && expected !== null && "error" in expected) {
    expect(answer).toEqual({ type: "Error", basicValue: expected.error });
  } else {
    expect(answer).toBe(expected);
  }
}

describe("arguments in cells", () => {
  beforeAll(async () => {
    workbook = await openHeadless(vectorBook(known));
  });
  afterAll(() => workbook.close());

  it.each(known.map((vector, index) => ({ ...vector, index })))(
    "$fn of cells agrees: $why",
    ({ index, ...vector }) => {
      expectAgreement(answerAt(index * rowsEach, vector.expect), vector);
    },
  );
});

describe("arguments written into the formula", () => {
  const constants = known.filter(isConstant);
  beforeAll(async () => {
    const rows = constants.flatMap((vector) => [
      [{ formula: constantFormula(vector) }],
      ...Array.from({ length: rowsEach - 1 }, () => []),
    ]);
    workbook = await openHeadless({
      name: "constants",
      sheets: [{ name: "Answers", rows, columnWidths: [], tables: [], frozenRows: 0 }],
    });
  });
  afterAll(() => workbook.close());

  it.each(constants.map((vector, index) => ({ ...vector, index })))(
    "$fn of figures agrees: $why",
    ({ index, ...vector }) => {
      expectAgreement(answerAt(index * rowsEach, vector.expect), vector);
    },
  );
});
