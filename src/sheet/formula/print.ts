/**
 * A tree back to text: no spaces but the one that means something, and parentheses only where the
 * tree would else read differently. To change part of a formula, splice its text instead (splice.ts):
 * that leaves the rest as its owner wrote it.
 */
import { binaryStrength, strength } from "./operators";
import type { ArrayConstant, Call, Constant, Expression, Omitted } from "./tree";

const constant = (value: Constant): string => {
  switch (value.kind) {
    case "number":
      return value.text;
    case "text":
      return `"${value.value.replace(/"/g, '""')}"`;
    case "boolean":
      return value.value ? "TRUE" : "FALSE";
    case "error":
      return value.value;
  }
};

const array = ({ rows }: ArrayConstant): string =>
  `{${rows.map((row) => row.map(constant).join(",")).join(";")}}`;

/** How tightly an expression holds together: what is weaker than its surroundings needs brackets. */
function holds(expression: Expression): number {
  switch (expression.kind) {
    case "binary":
      return binaryStrength(expression.operator) ?? strength.comparison;
    case "prefix":
      return strength.prefix;
    case "postfix":
      return expression.operator === "%" ? strength.percent : strength.spill;
    default:
      return strength.whole;
  }
}

/** Beside a colon anything but these could run together with it into another reference. */
const standsBesideColon = (expression: Expression): boolean =>
  expression.kind === "call" ||
  expression.kind === "applied" ||
  (expression.kind === "reference" &&
    !expression.text.includes("!") &&
    (expression.shape === "cell" || expression.shape === "structured"));

const isUnion = (expression: Expression): boolean =>
  expression.kind === "binary" && expression.operator === ",";

const bracketed = (expression: Expression): string => `(${print(expression)})`;

/** Inside an operator of a strength. A union keeps its brackets, or its comma would part arguments. */
function within(expression: Expression, least: number): string {
  const isLoose = isUnion(expression) || holds(expression) < least;
  return isLoose ? bracketed(expression) : print(expression);
}

const besideColon = (expression: Expression): string =>
  standsBesideColon(expression) ? print(expression) : bracketed(expression);

const argument = (given: Expression | Omitted): string =>
  given.kind === "omitted" ? "" : within(given, 0);

const argumentList = (given: Call["arguments"]): string => `(${given.map(argument).join(",")})`;

/** The text of an expression, without an equals sign. */
export function print(expression: Expression): string {
  switch (expression.kind) {
    case "array":
      return array(expression);
    case "reference":
      return expression.text;
    case "call":
      return expression.link + expression.name + argumentList(expression.arguments);
    case "applied":
      return print(expression.applies) + argumentList(expression.arguments);
    case "prefix":
      return expression.operator + within(expression.operand, strength.prefix);
    case "postfix":
      return within(expression.operand, holds(expression)) + expression.operator;
    case "binary":
      return binary(expression.operator, expression.left, expression.right);
    default:
      return constant(expression);
  }
}

function binary(operator: string, left: Expression, right: Expression): string {
  if (operator === ":") return `${besideColon(left)}:${besideColon(right)}`;
  const own = binaryStrength(operator) ?? strength.comparison;
  const isRun = operator === "," && isUnion(left);
  return (isRun ? print(left) : within(left, own)) + operator + within(right, own + 1);
}
