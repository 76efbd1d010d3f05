/** What is kept of a formula for as long as only cells change. */
import type { IUnitRange } from "@univerjs/core";
import { blockOf } from "../holding/engine-blocks";
import type { Asked } from "../holding/marks";

/** As much of a parsed formula as is looked at here. */
interface Parsed {
  isForcedCalculateFunction(): boolean;
  getChildren(): Parsed[];
}

/** What a formula was found to read. */
export interface Known {
  readonly formula: string;
  readonly ranges: readonly IUnitRange[];
  /** It reads the same until it is written anew: no table, no spilled block, nothing worked out. */
  readonly isFixed: boolean;
  /** Why it is held for itself; undefined where it is worked out. */
  readonly held: string | undefined;
}

interface Placed {
  readonly subUnitId: string;
  readonly row: number;
  readonly column: number;
  readonly formula: string;
}

/** As holding is told of it. */
export const askedOf = (tree: Placed, known: Known | undefined): Asked => ({
  sheet: tree.subUnitId,
  row: tree.row,
  column: tree.column,
  formula: tree.formula,
  held: known?.held,
  reads: (known?.ranges ?? []).map(blockOf),
});

/** What may stand for other cells although the formula stays as it is. */
const movable = /[[#@]/;

/** Does it hold a function that has another answer each time? */
const isVolatile = (node: Parsed): boolean =>
  node.isForcedCalculateFunction() || node.getChildren().some(isVolatile);

/** Does it read the same for as long as it is not written anew? */
export const isFixed = (formula: string, node: Parsed): boolean =>
  !movable.test(formula) && !isVolatile(node);

export const isNone = (map: object | undefined | null): boolean =>
  map === undefined || map === null || Object.keys(map).length === 0;

export const isSame = (some: readonly IUnitRange[], others: readonly IUnitRange[]): boolean =>
  some.length === others.length &&
  some.every(({ unitId, sheetId, range }, at) => {
    const other = others[at];
    return (
      other?.unitId === unitId &&
      other.sheetId === sheetId &&
      other.range.startRow === range.startRow &&
      other.range.startColumn === range.startColumn &&
      other.range.endRow === range.endRow &&
      other.range.endColumn === range.endColumn
    );
  });

/** Are they the same to whoever follows what reads what? */
export const isAlike = (before: Known, now: Known): boolean =>
  before.formula === now.formula && before.held === now.held && isSame(before.ranges, now.ranges);

/** A formula that is known need not be parsed to be asked whether it was changed. */
export const unparsed = null as never;
