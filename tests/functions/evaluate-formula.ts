/** Runs a formula that is one call of our functions with its figures written out. */
import { type Outcome, isProblem, problem } from "../../src/core/problem/problem";
import type { Answer } from "../../src/functions/answer";
import { functionNamed } from "../../src/functions/catalogue";
import { titreCallId } from "../../src/sheet/formula/names";
import { type Formula, readFormula, textOf } from "../../src/sheet/formula/read";
import type { Call, Expression } from "../../src/sheet/formula/tree";
import { answerOf, type Surroundings, valueOf } from "../../src/workbook/explain/value";

const isOurs = (tree: Expression): tree is Call =>
  tree.kind === "call" && titreCallId(tree) !== undefined;

function answerTo(call: Call, formula: Formula): Outcome<Answer> {
  if (!functionNamed(titreCallId(call) ?? "")) {
    return problem({ code: "unknown-function", given: call.name });
  }
  const around: Surroundings = {
    lookup: () => undefined,
    functionNamed,
    textOf: (part) => textOf(formula, part),
  };
  const answer = answerOf(call, around);
  if (answer !== undefined) return answer;
  const unknown = call.arguments.find((argument) => valueOf(argument, around) === undefined);
  return problem({ code: "no-figure", given: textOf(formula, unknown ?? call) });
}

/** INDEX(call,row,column) with the row and the column as figures: one cell of what a call spills. */
function indexed(tree: Expression) {
  if (tree.kind !== "call" || tree.name.toUpperCase() !== "INDEX") return undefined;
  const [call, row, column] = tree.arguments;
  const isPlace = row?.kind === "number" && column?.kind === "number";
  if (!call || call.kind === "omitted" || !isOurs(call) || !isPlace) return undefined;
  return { call, row: row.value, column: column.value };
}

/**
 * The answer, or what stands in its way: a formula that cannot be read, a function there is none of,
 * an argument without a value here, or a problem of the function itself. Also takes one cell of a
 * spilled answer: =INDEX(TITRE.BATCH(...),9,2).
 * @example evaluateFormula("=TITRE.CORRECTED({2.4,2.5},{0.15})") // 2.3
 */
export function evaluateFormula(text: string): Outcome<Answer> {
  const formula = readFormula(text);
  if (isProblem(formula)) return formula;
  const { tree } = formula;
  if (isOurs(tree)) return answerTo(tree, formula);
  const cell = indexed(tree);
  if (!cell) return problem({ code: "no-call", given: text });
  const answer = answerTo(cell.call, formula);
  if (isProblem(answer)) return answer;
  const rows = Array.isArray(answer) ? answer : [[answer]];
  return rows[cell.row - 1]?.[cell.column - 1] ?? problem({ code: "no-figure", given: text });
}
