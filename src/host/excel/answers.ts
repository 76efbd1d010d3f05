/**
 * Questions to the spreadsheet program. Each is asked in two rounds, since what an object holds may be
 * loaded only once it is known to exist; every round is one sync for all questions that fit one answer.
 */
import type { Block, CellContent, Cells, Found, Question, Values } from "../../sheet/port";
import { halves, inPieces, type Piece, putTogether } from "./pieces";
import { codeOf } from "./run";

/** What to load next, or the answer. */
type Round = () => Round | Found;

const place = "rowIndex,columnIndex,rowCount,columnCount";
const nothing: Found = { kind: "nothing" };

export const rangeOf = (context: Excel.RequestContext, block: Block): Excel.Range =>
  context.workbook.worksheets
    .getItem(block.sheet)
    .getRangeByIndexes(block.row, block.column, block.rows, block.columns);

const blockOf = (sheet: string, range: Excel.Range): Block => ({
  sheet,
  row: range.rowIndex,
  column: range.columnIndex,
  rows: range.rowCount,
  columns: range.columnCount,
});

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

function askCells(range: Excel.Range): Round {
  range.load(`${place},values,formulas,valueTypes,numberFormat`);
  range.worksheet.load("name");
  return () => cellsOf(range.worksheet.name, range);
}

const looksLikeError = (value: unknown): boolean =>
  typeof value === "string" && value.startsWith("#");

/** Which of the values are errors is asked only where one looks like it: a text of its own for each cell. */
function askValues(range: Excel.Range): Round {
  range.load(`${place},values`);
  range.worksheet.load("name");
  return () => {
    const block = blockOf(range.worksheet.name, range);
    const values = (): Values => ({ kind: "values", block, values: contentsOf(range) });
    if (!range.values.flat().some(looksLikeError)) {
      return { kind: "values", block, values: range.values as CellContent[][] };
    }
    range.load("valueTypes");
    return values;
  };
}

function askBlock(
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

function askTable(table: Excel.Table): Round {
  table.load("name,showTotals");
  return () => {
    if (table.isNullObject) return nothing;
    const [whole, head] = [table.getRange(), table.getHeaderRowRange()];
    whole.load(place);
    head.load("values");
    table.worksheet.load("name");
    table.autoFilter.load("isDataFiltered");
    return () => {
      const block = blockOf(table.worksheet.name, whole);
      return {
        kind: "table",
        name: table.name,
        block: { ...block, rows: block.rows - (table.showTotals ? 1 : 0) },
        headings: (head.values[0] ?? []).map(String),
        isFiltered: table.autoFilter.isDataFiltered,
        hasTotals: table.showTotals,
      };
    };
  };
}

function askSheets({ workbook }: Excel.RequestContext): Round {
  workbook.worksheets.load("items/name");
  workbook.protection.load("protected");
  return () => {
    const found = workbook.worksheets.items.map((sheet) => {
      const used = sheet.getUsedRangeOrNullObject(true);
      used.load(place);
      sheet.protection.load("protected");
      return { sheet, used };
    });
    return () => ({
      kind: "sheets",
      isProtected: workbook.protection.protected,
      sheets: found.map(({ sheet, used }) => ({
        name: sheet.name,
        isProtected: sheet.protection.protected,
        used: used.isNullObject ? undefined : blockOf(sheet.name, used),
      })),
    });
  };
}

function askNames({ workbook }: Excel.RequestContext): Round {
  workbook.tables.load("items/name");
  workbook.names.load("items/name");
  return () => ({
    kind: "names",
    tables: workbook.tables.items.map(({ name }) => name),
    defined: workbook.names.items.map(({ name }) => name),
  });
}

function ask(context: Excel.RequestContext, question: Question): Round {
  const { workbook } = context;
  switch (question.ask) {
    case "cells":
      return askBlock(context, question.block, askCells);
    case "values":
      return askBlock(context, question.block, askValues);
    case "table":
      return askTable(workbook.tables.getItemOrNullObject(question.name));
    case "sheets":
      return askSheets(context);
    case "names":
      return askNames(context);
    case "selection":
      return askCells(workbook.getActiveCell());
  }
}

/** Where the answer was too large after all, in halves. */
async function answersTo(
  context: Excel.RequestContext,
  group: readonly Piece[],
): Promise<{ of: number; found: Found }[]> {
  let rounds: (Round | Found)[] = group.map(({ question }) => ask(context, question));
  try {
    while (rounds.some((round) => typeof round === "function")) {
      await context.sync();
      rounds = rounds.map((round) => (typeof round === "function" ? round() : round));
    }
  } catch (thrown) {
    const smaller = codeOf(thrown) === "ResponsePayloadSizeLimitExceeded" && halves(group);
    if (!smaller) throw thrown;
    const found = [];
    for (const half of smaller) found.push(...(await answersTo(context, half)));
    return found;
  }
  return group.map(({ of }, at) => ({ of, found: rounds[at] as Found }));
}

export async function answers(
  context: Excel.RequestContext,
  questions: readonly Question[],
): Promise<Found[]> {
  const found = [];
  for (const group of inPieces(questions)) found.push(...(await answersTo(context, group)));
  return putTogether(questions, found);
}
