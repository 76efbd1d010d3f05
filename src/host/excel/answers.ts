/**
 * Questions to the spreadsheet program. Each is asked in two rounds, since what an object holds may be
 * loaded only once it is known to exist; every round is one sync for all questions that fit one answer.
 */
import type { Found, Question } from "../../sheet/port";
import { askBlock, askCells, askErrors, askValues, nothing, type Round } from "./ask-cells";
import { halves, inPieces, type Piece, putTogether } from "./pieces";
import { blockOf, place } from "./ranges";
import { codeOf } from "./fault-codes";

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
    case "errors":
      return askErrors(context, question.sheet);
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
