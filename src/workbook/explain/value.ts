/**
 * What part of a formula comes to, as a host would hand it to a function: constants as they are,
 * references from a look-up, our own functions from the catalogue. Other arithmetic belongs to the
 * spreadsheet: it has a value here only when the look-up knows it.
 */
import { isMissing, isProblem, problem, type Problem } from "../../core/problem/problem";
import type { Answer } from "../../functions/answer";
import type { WorksheetFunction } from "../../functions/define";
import { titreCallId } from "../../sheet/formula/names";
import type { Call, Constant, Expression, Omitted } from "../../sheet/formula/tree";

export interface Surroundings {
  /** The present values of a reference or an expression, by its text; undefined when not known. */
  readonly lookup: (written: string) => unknown[][] | undefined;
  readonly functionNamed: (id: string) => WorksheetFunction | undefined;
  /** The text of part of the formula. */
  readonly textOf: (part: Expression) => string;
}

/** Wrapped, since a value may itself be undefined: an argument that is left out. */
export interface Known {
  readonly value: unknown;
}

/** The error a cell shows for a problem. */
export const errorOf = (found: Problem): "#N/A" | "#VALUE!" =>
  isMissing(found) ? "#N/A" : "#VALUE!";

const errorCell = (code: string) => ({ type: "Error", basicType: "Error", basicValue: code });

const constantValue = (constant: Constant): unknown =>
  constant.kind === "error" ? errorCell(constant.value) : constant.value;

/** A figure with signs before it or percent signs after it is still a figure. */
function signed(expression: Expression): number | undefined {
  if (expression.kind === "number") return expression.value;
  if (expression.kind !== "prefix" && expression.kind !== "postfix") return undefined;
  const value = signed(expression.operand);
  if (value === undefined) return undefined;
  if (expression.operator === "-") return -value;
  if (expression.operator === "%") return value / 100;
  return expression.operator === "+" ? value : undefined;
}

/** The arguments of a call, or undefined when one of them is not known. */
function argumentValues(call: Call, around: Surroundings): unknown[] | undefined {
  const known = call.arguments.map((argument) => valueOf(argument, around));
  return known.every((each) => each !== undefined) ? known.map(({ value }) => value) : undefined;
}

/** The answer of one of our functions; undefined when an argument is not known. */
export function answerOf(call: Call, around: Surroundings): Answer | Problem | undefined {
  const entry = around.functionNamed(titreCallId(call) ?? "");
  if (!entry) return undefined;
  const most = entry.arguments.length;
  const count = call.arguments.length;
  if (count > most) {
    return problem({ code: "too-many-arguments", called: entry.id, given: count, most });
  }
  const given = argumentValues(call, around);
  return given && entry.evaluate(given);
}

export function valueOf(part: Expression | Omitted, around: Surroundings): Known | undefined {
  switch (part.kind) {
    case "omitted":
      return { value: undefined };
    case "number":
    case "text":
    case "boolean":
    case "error":
      return { value: constantValue(part) };
    case "array":
      return { value: part.rows.map((row) => row.map(constantValue)) };
  }
  const answer = part.kind === "call" ? answerOf(part, around) : undefined;
  if (answer !== undefined) {
    return { value: isProblem(answer) ? errorCell(errorOf(answer)) : answer };
  }
  const value = signed(part) ?? around.lookup(around.textOf(part));
  return value === undefined ? undefined : { value };
}
