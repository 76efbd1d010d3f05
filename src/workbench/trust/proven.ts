/**
 * Whether the page may work a formula out and write its result into a file. It may where everything the
 * formula uses was seen to give what LibreOffice gives: see proven-functions.ts. Everything else, a
 * function, a kind of reference, a way of reading a range, is named, and the formula keeps its result.
 */
import { isProblem } from "../../core/problem/problem";
import { plainName, titreCallId } from "../../sheet/formula/names";
import { readFormula } from "../../sheet/formula/read";
import { isReadable, unreadable } from "../../sheet/formula/readable";
import { sheetOf, targetOf } from "../../sheet/formula/reference";
import type { Call, Constant, Expression, Omitted, Reference } from "../../sheet/formula/tree";
import { type Argument, argumentsOf, worksCellByCell } from "./proven-functions";

export interface FormulaContext {
  /** Worked out cell by cell: an array formula, and in the grid what spills. */
  readonly isArray?: boolean;
  /** What a defined name stands for, seen from the formula's sheet; undefined when there is none. */
  readonly nameRefersTo?: (name: string) => string | undefined;
  /** Is there a table of this name? */
  readonly isTable?: (name: string) => boolean;
  /** Days are counted from this year. */
  readonly dates?: 1900 | 1904;
}

/** Where a value is wanted, a whole range may be, or every cell of one. */
type Wanted = "value" | "range" | "each";

interface Asking extends FormulaContext {
  readonly wanted: Wanted;
  /** Names that stand in names. */
  readonly depth: number;
}

const deepest = 16;

const says = (what: string): string => `It uses ${what}.`;

function cellsReason(isOne: boolean, { wanted }: Asking): string | undefined {
  return isOne || wanted !== "value" ? undefined : says("a range where one value belongs");
}

function nameReason(name: string, asking: Asking): string | undefined {
  const refersTo = asking.nameRefersTo?.(name);
  if (refersTo === undefined) {
    // with its headings to some programs, without them to others
    return asking.isTable?.(name)
      ? says(`the table ${name} by its bare name: ${name}[] stands for its rows`)
      : says(`the name ${name}`);
  }
  if (asking.depth >= deepest) return says(`the name ${name}, which leads through many others`);
  return textReason(refersTo, { ...asking, depth: asking.depth + 1 });
}

function referenceReason(reference: Reference, asking: Asking): string | undefined {
  const sheet = sheetOf(reference);
  if (sheet?.workbook !== undefined) return says("another workbook");
  if (sheet?.last !== undefined) return says("several sheets at once");
  const target = targetOf(reference);
  if (target.kind === "lost") return says("a lost reference");
  if (target.kind === "name") return nameReason(target.name, asking);
  if (target.kind === "cells") return cellsReason(reference.shape === "cell", asking);
  // The engine's reader does not find such a table, and a function may take that error for "nothing there".
  if (/[^\p{L}\p{N}]/u.test(target.table)) return says(`the table ${target.table}`);
  if (target.sections.some((section) => section !== "this row" && section !== "data")) {
    return says("a table's headings or totals");
  }
  const isRow = target.sections.includes("this row");
  return cellsReason(isRow && target.columns.length === 1, asking);
}

/** The argument at a place; undefined beyond the last. */
function argumentAt(known: readonly Argument[], place: number): Argument | undefined {
  const last = known.at(-1);
  return known[place] ?? (last?.isRepeated ? last : undefined);
}

const countsCells = new Set(["ROWS", "COLUMNS"]);

/** The engine ends a whole row or column where the sheet ends here. */
function isEndless(part: Expression | Omitted): boolean {
  if (part.kind !== "reference") return part.kind !== "omitted" && part.kind !== "array";
  const target = targetOf(part);
  if (target.kind === "name") return true;
  return target.kind === "cells" && Object.values(target.edges).some((edge) => edge === undefined);
}

const wantedFor: Readonly<Record<string, Wanted>> = { v: "value", l: "range", a: "each" };

/** Ours read what they are given as it is. */
const ours: readonly Argument[] = [{ sign: "l", isOptional: true, isRepeated: true }];

function callReason(call: Call, asking: Asking): string | undefined {
  const isOurs = titreCallId(call) !== undefined;
  const name = plainName(call.name);
  if (!isOurs && call.link !== "") return says("another add-in or workbook");
  const known = isOurs ? ours : argumentsOf.get(name);
  if (known === undefined) return says(name);
  // what it reads is looked at in its own cell: see holding/subtotals.ts
  if (name === "SUBTOTAL" && asking.depth > 0) return says("SUBTOTAL in a name");
  if (countsCells.has(name) && call.arguments.some(isEndless)) {
    return says(`${name} of whole rows or columns`);
  }
  const given = call.arguments.length;
  const least = known.filter(({ isOptional }) => !isOptional).length;
  if (given < least || (given > known.length && !known.at(-1)?.isRepeated)) {
    return says(`${name} with ${String(given)} arguments`);
  }
  const isEach = asking.wanted === "each";
  const lifts = isEach && worksCellByCell(name);
  return firstReason(call.arguments, (argument, place) => {
    const sign = argumentAt(known, place)?.sign ?? "v";
    const plain = sign === "p" ? asking.wanted : (wantedFor[sign] ?? "value");
    const wanted = (plain === "value" ? lifts : isEach) ? "each" : plain;
    return expressionReason(argument, { ...asking, wanted });
  });
}

function firstReason(
  parts: readonly (Expression | Omitted)[],
  reason: (part: Expression, place: number) => string | undefined,
): string | undefined {
  for (const [place, part] of parts.entries()) {
    const found = part.kind === "omitted" ? undefined : reason(part, place);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** The engine cuts what stands in braces at its commas, and reads figures into it. */
const isMistakable = (each: Constant): boolean =>
  each.kind === "text" && !/^\p{L}[\p{L}\d_ ]*$/u.test(each.value);

function expressionReason(node: Expression, asking: Asking): string | undefined {
  const { wanted } = asking;
  const operand: Asking = { ...asking, wanted: wanted === "each" ? "each" : "value" };
  switch (node.kind) {
    case "reference":
      return referenceReason(node, asking);
    case "call":
      return callReason(node, asking);
    case "applied":
      return says("LAMBDA");
    case "array":
      if (node.rows.flat().some(isMistakable)) return says("words in braces");
      return cellsReason(false, asking);
    case "prefix":
      if (node.operator === "@") return says("@");
      if (node.operand.kind === "text" || node.operand.kind === "boolean")
        return says("a sign before text");
      return expressionReason(node.operand, operand);
    case "postfix":
      return node.operator === "#" ? says("#") : expressionReason(node.operand, operand);
    case "binary":
      if (node.operator === ",") return says("several ranges joined by a comma");
      if (node.operator === " ") return says("where two ranges cross");
      if (node.operator === ":") return says("a range that is worked out");
      return firstReason([node.left, node.right], (part) => expressionReason(part, operand));
    case "text":
      return /[\r\n]/.test(node.value) ? says("text of several lines") : undefined;
    default:
      return undefined;
  }
}

function textReason(formula: string, asking: Asking): string | undefined {
  const read = isReadable(formula) ? readFormula(formula) : undefined;
  if (!read || isProblem(read)) return unreadable;
  return expressionReason(read.tree, asking);
}

/**
 * Why a formula is not to be worked out here, as a short sentence; undefined when it may be.
 * @param formula as a cell shows it, or as a file holds it; or its tree
 * @example unprovenReason("=OFFSET(A1,1,0)", {}) // "It uses OFFSET."
 */
export function unprovenReason(
  formula: string | Expression,
  context: FormulaContext,
): string | undefined {
  const asking: Asking = { ...context, wanted: context.isArray ? "each" : "value", depth: 0 };
  return typeof formula === "string"
    ? textReason(formula, asking)
    : expressionReason(formula, asking);
}
