/** One form of formula written in plain functions. */
import { sheetLimits } from "../../sheet/spreadsheet-limits";
import { isProblem } from "../../core/problem/problem";
import type { Twin } from "../../functions/twin";
import { plainName, titreCallId } from "../../sheet/formula/names";
import { readFormula } from "../../sheet/formula/read";
import type { Call, Expression, Omitted } from "../../sheet/formula/tree";
import { isArrayNatured } from "../../xlsx/formulas/array-nature";
import { Builder } from "./workings/builder";
import type { Answer } from "./answered";
import { partText, shownAnswer } from "./calls";
import type { Instance } from "./workings/instance";
import type { Home, Mode } from "./workings/standing";
import type { Around } from "./workings/located";
import { NoTwin } from "./no-twin";
import {
  type FormulaTemplate,
  type Parts,
  partsOf,
  type Template,
  written,
} from "./workings/template";

const longest = sheetLimits.formula;

const isOurs = (node: Expression | Omitted | undefined): node is Call =>
  node?.kind === "call" && titreCallId(node) !== undefined;

/** INDEX(call,row,column) with both written out: one cell of what the call spills. */
function indexed(tree: Expression) {
  if (tree.kind !== "call" || plainName(tree.name) !== "INDEX") return undefined;
  const [call, row, column] = tree.arguments;
  const isPlace = row?.kind === "number" && column?.kind === "number";
  return isOurs(call) && isPlace ? { call, row: row.value, column: column.value } : undefined;
}

function wholeAnswer(tree: Expression, builder: Builder): Answer {
  if (isOurs(tree)) return shownAnswer(tree, builder);
  const cell = indexed(tree);
  if (cell) {
    const answer = shownAnswer(cell.call, builder);
    if (answer.kind === "value") return answer;
    const formulas = answer.kind === "table" ? answer.formulas : [[answer.formula]];
    const formula = formulas[cell.row - 1]?.[cell.column - 1];
    return formula === undefined ? { kind: "value" } : { kind: "formula", formula };
  }
  return { kind: "formula", formula: partText(tree, builder) };
}

/** In its own cell and in the row of helper cells that is farthest down: as long as it can get. */
const sample = (template: Template, pieces: readonly string[], home: Home): Instance => ({
  template,
  pieces,
  home,
  room: { row: 999_999, siblings: [999_999, 999_999] },
});

const worksOnMany = (formula: string): boolean => {
  const read = readFormula(formula);
  return !isProblem(read) && isArrayNatured(read.tree);
};

function templateOf(answer: Answer, builder: Builder): Template {
  const ids = [...builder.ids];
  if (answer.kind === "value") return { kind: "value", ids };
  const { home, pieces } = builder.around;
  const instance = sample({ kind: "value", ids }, pieces, home);
  const parts = (marked: string): Parts => partsOf(marked, builder.operands);
  const isArray = (given: Parts, mode: Mode) => worksOnMany(written(given, instance, mode));
  const isTable = answer.kind === "table";
  const rows = isTable
    ? answer.formulas.map((row) =>
        row.map((cell) => (cell === undefined ? undefined : parts(cell))),
      )
    : [[parts(answer.formula)]];
  return {
    kind: "formulas",
    ids,
    rows,
    isTable,
    isArray: rows.some((row) => row.some((cell) => cell !== undefined && isArray(cell, "here"))),
    ownRow: builder.around.ownRow[0],
    helpers: builder.helpers.map(({ label, formula }) => {
      const own = parts(formula);
      return { label, parts: own, isArray: isArray(own, "workings") };
    }),
    blocks: builder.blocks.map((block) => ({
      label: block.label,
      rows: block.rows.map((row) => row.map(parts)),
    })),
  };
}

function* allParts(template: FormulaTemplate): Generator<Parts> {
  for (const row of template.rows) for (const cell of row) if (cell) yield cell;
  for (const { parts } of template.helpers) yield parts;
  for (const block of template.blocks) for (const row of block.rows) yield* row;
}

/** Whether all that is written out keeps to the length a formula can have. */
export function isShortEnough(
  template: FormulaTemplate,
  pieces: readonly string[],
  home: Home,
): boolean {
  const instance = sample(template, pieces, home);
  for (const parts of allParts(template)) {
    if (written(parts, instance, "here").length > longest) return false;
    if (written(parts, instance, "workings").length > longest) return false;
  }
  return true;
}

function attempt(
  canonical: string,
  tree: Expression,
  around: Omit<Around, "ownRow">,
  twinOf: (id: string) => Twin | undefined,
  isSpread: boolean,
): Template {
  const builder = new Builder(canonical, { ...around, ownRow: [] }, twinOf, isSpread);
  try {
    return templateOf(wholeAnswer(tree, builder), builder);
  } catch (stopped) {
    const ids = [...builder.ids];
    // a chain of thousands of signs, a range of billions of cells: that one formula stays as it is
    if (stopped instanceof RangeError) {
      const reason = "it is too long, or its ranges too large, to be written out";
      return { kind: "left", ids, reason, isSentence: false };
    }
    if (!(stopped instanceof NoTwin)) throw stopped;
    const { reason, isSentence } = stopped;
    return { kind: "left", ids, reason, isSentence };
  }
}

/** Written out within the formula, or, where that grows too long, with each call in a helper cell. */
export function writeOut(
  canonical: string,
  tree: Expression,
  around: Omit<Around, "ownRow">,
  twinOf: (id: string) => Twin | undefined,
): Template {
  const plain = attempt(canonical, tree, around, twinOf, false);
  if (plain.kind !== "formulas" || isShortEnough(plain, around.pieces, around.home)) return plain;
  const spread = attempt(canonical, tree, around, twinOf, true);
  if (spread.kind !== "formulas" || isShortEnough(spread, around.pieces, around.home)) {
    return spread;
  }
  const reason = "its plain formula is longer than a cell can hold";
  return { kind: "left", ids: spread.ids, reason, isSentence: false };
}
