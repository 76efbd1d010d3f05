import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { HeadlessWorkbook } from "../../src/workbench/engine/headless";
import { openHeadless } from "../../src/workbench/engine/node";
import { built, isOfFigures, isRight, type Seen, type Vector } from "../vectors";
import { constantFormula, isConstant, rowsEach, vectorBook } from "./vectors";

let workbook: HeadlessWorkbook;

/** The answer as it stands in the cells, in the shape that is expected. */
function seenAt(row: number, vector: Vector): Seen {
  const value = (down: number, across: number): unknown => {
    const cell: unknown = workbook.value({ sheet: "Answers", row: row + down, column: across });
    return cell === null || cell === undefined ? "" : cell;
  };
  const { expect: shape } = vector;
  const first = value(0, 0);
  if (typeof first === "object" && first !== null && "basicValue" in first) {
    return { error: String(first.basicValue) };
  }
  if (isOfFigures(vector)) {
    return { value: Array.from({ length: rowsEach }, (_, down) => ["", value(down, 1)]) };
  }
  if (!Array.isArray(shape)) return { value: first };
  const rows = shape as unknown[][];
  return { value: rows.map((cells, down) => cells.map((_, across) => value(down, across))) };
}

function expectRight(row: number, vector: Vector): void {
  const seen = seenAt(row, vector);
  expect(isRight(seen, vector), JSON.stringify(seen)).toBe(true);
}

describe("arguments in cells", () => {
  beforeAll(async () => {
    workbook = await openHeadless(vectorBook(built));
  });
  afterAll(() => workbook.close());

  it.each(built.map((vector, index) => ({ ...vector, index })))(
    "$fn of cells agrees: $why",
    ({ index, ...vector }) => {
      expectRight(index * rowsEach, vector);
    },
  );
});

describe("arguments written into the formula", () => {
  const constants = built.filter(isConstant);
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
      expectRight(index * rowsEach, vector);
    },
  );
});
