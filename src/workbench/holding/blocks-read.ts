/**
 * What a formula reads, by its text alone: for those the grid's engine is not asked about. Where that
 * cannot be told, because the formula says at run time where it reads, it may be anything.
 */
import { lastColumn, lastRow } from "../../sheet/spreadsheet-limits";
import { isProblem } from "../../core/problem/problem";
import { plainName } from "../../sheet/formula/names";
import { readFormula } from "../../sheet/formula/read";
import { isReadable } from "../../sheet/formula/readable";
import { sheetOf, targetOf } from "../../sheet/formula/reference";
import type { Reference } from "../../sheet/formula/tree";
import { nodesOf } from "../../sheet/formula/walk";
import type { ReadBlock } from "./readers";

export interface Surroundings {
  /** The engine's names of the sheets, in their order, by the names that formulas use, in small letters. */
  readonly sheets: ReadonlyMap<string, string>;
  /** The text a name stands for, seen from a sheet. */
  refersTo(name: string, sheet: string): string | undefined;
  /** The block of a table with its headings and totals; "" is the one around a cell. */
  table(name: string, from: { sheet: string; row: number; column: number }): ReadBlock | undefined;
}

export type Reach = readonly ReadBlock[] | "anything";

const saysWhere = new Set(["OFFSET", "INDIRECT", "GETPIVOTDATA", "CELL", "INFO", "SHEETS"]);

const deepest = 16;

interface From {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** Undefined where nobody can say. */
function sheetsOf(reference: Reference, from: From, around: Surroundings): string[] | undefined {
  const named = sheetOf(reference);
  if (!named) return [from.sheet];
  // what another workbook says does not follow from this one
  if (named.workbook !== undefined) return [];
  const all = [...around.sheets];
  const place = (name: string) => all.findIndex(([known]) => known === name.toLowerCase());
  const first = place(named.first);
  const last = named.last === undefined ? first : place(named.last);
  if (first < 0 || last < 0) return undefined;
  return all.slice(Math.min(first, last), Math.max(first, last) + 1).map(([, key]) => key);
}

function ofReference(reference: Reference, from: From, around: Surroundings, depth: number): Reach {
  const target = targetOf(reference);
  if (target.kind === "lost") return [];
  if (target.kind === "structured") {
    const block = around.table(target.table, from);
    return block ? [block] : "anything";
  }
  const sheets = sheetsOf(reference, from, around);
  if (!sheets) return "anything";
  if (target.kind === "name") {
    const refersTo = around.refersTo(target.name, sheets[0] ?? from.sheet);
    if (refersTo === undefined || depth >= deepest) return "anything";
    return blocksRead(refersTo, from, around, depth + 1);
  }
  const { top = 0, left = 0, bottom = lastRow, right = lastColumn } = target.edges;
  return sheets.map((sheet) => ({ sheet, top, left, bottom, right }));
}

export function blocksRead(formula: string, from: From, around: Surroundings, depth = 0): Reach {
  const read = isReadable(formula) ? readFormula(formula) : undefined;
  if (!read || isProblem(read)) return "anything";
  const found: ReadBlock[] = [];
  for (const node of nodesOf(read.tree)) {
    const isOpen =
      (node.kind === "call" && saysWhere.has(plainName(node.name))) ||
      (node.kind === "binary" && node.operator === ":") ||
      (node.kind === "postfix" && node.operator === "#");
    if (isOpen) return "anything";
    if (node.kind !== "reference") continue;
    const reach = ofReference(node, from, around, depth);
    if (reach === "anything") return reach;
    found.push(...reach);
  }
  return found;
}
