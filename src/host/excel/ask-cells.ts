/** Questions about cells, in rounds: what is loaded next, or the answer. */
import type { Block, CellContent, Cells, Found, Values } from "../../sheet/port";
import { blockOf, place } from "./ranges";

/** What to load next, or the answer. */
export type Round = () => Round | Found;

export const nothing: Found = { kind: "nothing" };

const contentsOf = (range: Excel.Range): CellContent[][] =>
  (range.values as CellContent[][]).map((row, r) =>
    row.map((value, c) =>
      range.valueTypes[r]?.[c] === Excel.RangeValueType.error ? { error: String(value) } : value,
    ),
  );

/** Formulas come back as values where there are none, so a formula is what differs from its value. */
function cellsOf(sheet: string, range: Excel.Range): Cells {
  const contents = contentsOf(range);
  const formulas = (range.formulas as unknown[][]).map((row, r) =>
    row.map((formula, c) =>
      typeof formula === "string" && formula.startsWith("=") && formula !== contents[r]?.[c]
        ? formula
        : "",
    ),
  );
  return {
    kind: "cells",
    block: blockOf(sheet, range),
    values: contents,
    formulas,
    formats: range.numberFormat as string[][],
  };
}

export function askCells(range: Excel.Range): Round {
  range.load(`${place},values,formulas,valueTypes,numberFormat`);
  range.worksheet.load("name");
  return () => cellsOf(range.worksheet.name, range);
}

const looksLikeError = (value: unknown): boolean =>
  typeof value === "string" && value.startsWith("#");

/** Which of the values are errors is asked only where one looks like it: a text of its own for each cell. */
export function askValues(range: Excel.Range): Round {
  range.load(`${place},values`);
  range.worksheet.load("name");
  return () => {
    const block = blockOf(range.worksheet.name, range);
    const values = (): Values => ({ kind: "values", block, values: contentsOf(range) });
    if (!range.values.flat().some(looksLikeError)) {
      return { kind: "values", block, values: range.values as CellContent[][] };
    }
    // both anew: what was busy a moment ago may have its answer now
    range.load("values,valueTypes");
    return values;
  };
}

export function askBlock(
  { workbook }: Excel.RequestContext,
  block: Block,
  asking: (range: Excel.Range) => Round,
): Round {
  const sheet = workbook.worksheets.getItemOrNullObject(block.sheet);
  return () =>
    sheet.isNullObject
      ? nothing
      : asking(sheet.getRangeByIndexes(block.row, block.column, block.rows, block.columns));
}

/** The program's own search, which hands over the errors and nothing else. */
export function askErrors({ workbook }: Excel.RequestContext, name: string): Round {
  const sheet = workbook.worksheets.getItemOrNullObject(name);
  return () => {
    if (sheet.isNullObject) return nothing;
    const found = sheet.getRange().getSpecialCellsOrNullObject("Formulas", "Errors");
    found.load("areaCount");
    return () => {
      if (found.isNullObject) return { kind: "areas", blocks: [] };
      found.areas.load(place.replace(/\w+/g, "items/$&"));
      return () => ({
        kind: "areas",
        blocks: found.areas.items.map((range) => blockOf(name, range)),
      });
    };
  };
}
