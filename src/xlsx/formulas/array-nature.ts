/**
 * Does a formula work on many cells at once, where one is meant? Written as a plain formula, a
 * spreadsheet program would take from each block the one cell of the formula's own row or column, and
 * quietly show another figure; so such a formula is written as an array formula.
 *
 * Seen are: operators over blocks, functions of one value given a block, arrays in braces, and
 * functions that answer with arrays. A block behind a defined name is not.
 */
import { spills } from "../../functions/names";
import { plainName, titreCallId } from "../../sheet/formula/names";
import { joinsReferences } from "../../sheet/formula/operators";
import { targetOf } from "../../sheet/formula/reference";
import type { Call, Expression, Omitted, Reference } from "../../sheet/formula/tree";

const ofOneValue = new Set(
  "ABS SQRT EXP LN LOG LOG10 POWER INT TRUNC ROUND ROUNDUP ROUNDDOWN SIGN MOD LEN LEFT RIGHT MID TRIM UPPER LOWER SUBSTITUTE VALUE TEXT EXACT ISNUMBER ISTEXT ISBLANK ISERROR ISNA NOT IF IFERROR IFNA IFS SWITCH YEAR MONTH DAY".split(
    " ",
  ),
);

const answersWithArray = new Set([
  ..."FILTER SORT SORTBY UNIQUE SEQUENCE RANDARRAY TRANSPOSE MMULT MINVERSE LINEST LOGEST TREND GROWTH FREQUENCY MAP BYROW BYCOL SCAN MAKEARRAY TEXTSPLIT VSTACK HSTACK TOROW TOCOL WRAPROWS WRAPCOLS TAKE DROP CHOOSEROWS CHOOSECOLS EXPAND ANCHORARRAY".split(
    " ",
  ),
]);

/** These take their arguments as arrays in any formula. */
const takesArrays = new Set(["SUMPRODUCT", "LOOKUP", "MMULT"]);

function isManyCells(reference: Reference): boolean {
  if (reference.shape === "block" || reference.shape === "lines") return true;
  if (reference.shape !== "structured") return false;
  const target = targetOf(reference);
  if (target.kind !== "structured") return false;
  return target.sections[0] !== "this row" || target.columns.length !== 1;
}

/** May it stand for more than one value? */
function isMany(expression: Expression | Omitted): boolean {
  switch (expression.kind) {
    case "reference":
      return isManyCells(expression);
    case "array":
      return true;
    case "postfix":
      return expression.operator === "#" || isMany(expression.operand);
    case "prefix":
      return expression.operator !== "@" && isMany(expression.operand);
    case "binary":
      return (
        joinsReferences(expression.operator) || isMany(expression.left) || isMany(expression.right)
      );
    case "call":
      return isManyCall(expression);
    default:
      return false;
  }
}

function isManyCall(call: Call): boolean {
  const id = titreCallId(call);
  if (id !== undefined) return spills(id);
  const name = plainName(call.name);
  return answersWithArray.has(name) || (ofOneValue.has(name) && call.arguments.some(isMany));
}

/**
 * Is anything inside worked out over many cells? `isNone`: it is known already that the expression does
 * not stand for many, so that in a long sum each part is looked at once.
 */
function worksOnMany(expression: Expression | Omitted, isNone = false): boolean {
  switch (expression.kind) {
    case "binary":
      if (joinsReferences(expression.operator)) return false;
      if (!isNone && isMany(expression)) return true;
      return worksOnMany(expression.left, true) || worksOnMany(expression.right, true);
    case "prefix":
    case "postfix": {
      const isPlain = expression.operator !== "#" && expression.operator !== "@";
      if (isPlain && !isNone && isMany(expression)) return true;
      return worksOnMany(expression.operand, isPlain);
    }
    case "call":
      if (takesArrays.has(plainName(expression.name))) return false;
      if (!isNone && isManyCall(expression)) return true;
      return expression.arguments.some((given) => worksOnMany(given));
    case "applied":
      return true;
    default:
      return false;
  }
}

/** A bare block, a spilled area or an array in braces would be cut down to one value as well. */
export const isArrayNatured = (tree: Expression): boolean => worksOnMany(tree) || isMany(tree);
