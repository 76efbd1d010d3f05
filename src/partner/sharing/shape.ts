/**
 * How many cells an expression stands for, where that can be told from its text: arithmetic goes cell
 * by cell, and a function that answers with one value is one cell.
 */
import { plainName } from "../../sheet/formula/names";
import { joinsReferences } from "../../sheet/formula/operators";
import type { Expression, Omitted, Reference } from "../../sheet/formula/tree";

export interface Shape {
  readonly rows: number;
  readonly columns: number;
}

const one: Shape = { rows: 1, columns: 1 };

const cellByCell = new Set(
  "ABS SQRT EXP LN LOG LOG10 POWER INT TRUNC ROUND ROUNDUP ROUNDDOWN SIGN MOD LEN LEFT RIGHT MID TRIM UPPER LOWER SUBSTITUTE VALUE TEXT EXACT ISNUMBER ISTEXT ISBLANK ISERROR ISNA NOT IF IFERROR IFNA".split(
    " ",
  ),
);
const ofOneValue = new Set(
  "SUM AVERAGE MIN MAX COUNT COUNTA COUNTBLANK MEDIAN PRODUCT SUMPRODUCT SUMIF SUMIFS COUNTIF COUNTIFS AVERAGEIF AVERAGEIFS STDEV STDEV.S STDEVP STDEV.P VAR VAR.S LARGE SMALL VLOOKUP HLOOKUP LOOKUP MATCH AND OR TODAY NOW PI TINV T.INV.2T".split(
    " ",
  ),
);

/** Does the function take whole blocks and answer with one value? */
export const isOfOneValue = (name: string): boolean => ofOneValue.has(plainName(name));

const joined = (a: Shape | undefined, b: Shape | undefined): Shape | undefined => {
  if (!a || !b) return undefined;
  if (a.rows * a.columns === 1) return b;
  if (b.rows * b.columns === 1) return a;
  return a.rows === b.rows && a.columns === b.columns ? a : undefined;
};

/** Undefined where it cannot be told. */
export function shapeOf(
  expression: Expression | Omitted,
  ofReference: (reference: Reference) => Shape,
  isOurs: (expression: Expression) => boolean,
): Shape | undefined {
  const shape = (part: Expression | Omitted) => shapeOf(part, ofReference, isOurs);
  switch (expression.kind) {
    case "reference":
      return ofReference(expression);
    case "binary":
      if (joinsReferences(expression.operator)) return undefined;
      return joined(shape(expression.left), shape(expression.right));
    case "prefix":
      return expression.operator === "@" ? one : shape(expression.operand);
    case "postfix":
      return expression.operator === "#" ? undefined : shape(expression.operand);
    case "call":
      if (isOurs(expression) || isOfOneValue(expression.name)) return one;
      if (!cellByCell.has(plainName(expression.name))) return undefined;
      return expression.arguments.map(shape).reduce(joined, one);
    case "applied":
    case "array":
      return undefined;
    default:
      return one;
  }
}
