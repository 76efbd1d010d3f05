/**
 * Which formulas of a file the grid is given to work out. Its engine goes down one level of the stack
 * with each operator of a chain, and cell by cell through a block: one formula of thousands of signs, or
 * over billions of cells, would end the working out of the whole workbook, or never end.
 */
import { isProblem } from "../../core/problem/problem";
import { columnNumber } from "../../sheet/cell-name";
import { isReadable } from "../../sheet/formula/readable";
import { readFormula } from "../../sheet/formula/read";
import { type Node, partsOf } from "../../sheet/formula/walk";

/** Shorter formulas are not looked into: they cannot go deep. */
const shortest = 1024;
const deepest = 1024;
const mostCells = 2_000_000;

const blocks =
  /\$?([A-Z]{1,3})\$?(\d{1,7}):\$?([A-Z]{1,3})\$?(\d{1,7})|\$?(\d{1,7}):\$?(\d{1,7})/gi;

/** Whole rows count as wide as a sheet that people fill by hand. */
const usualColumns = 26;

function isSmall(formula: string): boolean {
  for (const [, left, top, right, bottom, first, last] of formula.matchAll(blocks)) {
    const rows = Math.abs(Number(bottom ?? last) - Number(top ?? first)) + 1;
    const columns =
      left === undefined || right === undefined
        ? usualColumns
        : Math.abs(columnNumber(right) - columnNumber(left)) + 1;
    if (rows * columns > mostCells) return false;
  }
  return true;
}

function isFlat(formula: string): boolean {
  if (formula.length < shortest) return true;
  if (!isReadable(formula)) return false;
  const read = readFormula(formula);
  if (isProblem(read)) {
    return !(read.fields.code === "broken-formula" && /^too-/.test(read.fields.trouble));
  }
  let level: readonly Node[] = [read.tree];
  for (let depth = 0; level.length > 0; depth += 1) {
    if (depth > deepest) return false;
    level = level.flatMap(partsOf);
  }
  return true;
}

/** The one function of the engine that asks for something elsewhere; the page's policy would refuse it. */
const fetches = /\bIMAGE\s*\(/i;

export const isWorkable = (formula: string): boolean =>
  isFlat(formula) && isSmall(formula) && !fetches.test(formula);
