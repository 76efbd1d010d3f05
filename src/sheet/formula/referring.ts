/** Expressions that stand for cells, and how two of them join. */
import type { Binary, Expression, Reference } from "./tree";
import { joinsReferences } from "./operators";
import { across } from "./span";

/** May this stand beside a colon, a union's comma or the space of an intersection? */
export function isReferring(expression: Expression): boolean {
  switch (expression.kind) {
    case "reference":
    case "call":
    case "applied":
      return true;
    case "error":
      return expression.value === "#REF!";
    case "postfix":
      return expression.operator === "#";
    case "binary":
      return joinsReferences(expression.operator);
    case "prefix":
      return expression.operator === "@" && isReferring(expression.operand);
    default:
      return false;
  }
}

const isOnSheet = ({ text }: Reference): boolean => text.includes("!");

const isCell = (expression: Expression): expression is Reference =>
  expression.kind === "reference" && expression.shape === "cell";

/** Two cells with a colon between are one block, however they were spaced. */
export function joined(operator: string, left: Expression, right: Expression): Reference | Binary {
  const span = across(left, right);
  if (operator === ":" && isCell(left) && isCell(right) && !isOnSheet(right)) {
    return { kind: "reference", shape: "block", text: `${left.text}:${right.text}`, ...span };
  }
  return { kind: "binary", operator, left, right, ...span };
}
