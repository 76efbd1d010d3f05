/**
 * The new bytes read again before anybody gets them: each formula that was written must say, as a tree,
 * what was meant, and each that nobody touched must stand there as it was. Whatever makes a file goes
 * through here, so a mistake on a formula's way into it ends in a sentence and not in the file.
 */
import { areaName } from "../sheet/cell-name";
import type { Area, Place } from "../sheet/area";
import { isSameFormula } from "../sheet/formula/same-formula";
import { named } from "./cell-address";
import { limits } from "./limits";
import type { Cell, Sheet, Workbook } from "./model";
import { readWorkbook } from "./open";
import { Package } from "./package/package";
import { answer, isFileProblem, refuse } from "./problem";

/** What the formula of a cell was meant to say. */
export interface MeantFormula extends Place {
  /** As a cell shows it, equals sign and all. */
  readonly formula: string;
  /** The table the cell stands in. */
  readonly table?: string | undefined;
  /** It answers over this area. */
  readonly array?: Area | undefined;
}

/** Which cells of a sheet were to change, and what the formulas among them were meant to say. */
export interface MeantCells {
  readonly sheet: string;
  readonly formulas: readonly MeantFormula[];
  /** Is the cell's own formula to be there no more? */
  isReplaced(place: Place): boolean;
  /** The sheet as it was; undefined for a new one. */
  readonly before: Pick<Sheet, "cells"> | undefined;
}

const keyOf = ({ row, column }: Place): number => row * limits.columns + column;

/** Pairs that were compared before: a column has its formula in every row. */
type Known = Map<string, boolean>;

export function isAsMeant(
  { formula, table = "" }: Pick<MeantFormula, "formula" | "table">,
  found: string | undefined,
  known: Known,
): boolean {
  if (found === undefined) return false;
  if (found === formula) return true;
  const pair = `${table}\n${formula}\n${found}`;
  const before = known.get(pair);
  if (before !== undefined) return before;
  const isSame = isSameFormula(formula, found, table);
  known.set(pair, isSame);
  return isSame;
}

const isOver = (wanted: Area | undefined, cell: Cell): boolean =>
  (wanted && areaName(wanted)) === (cell.array && areaName(cell.array));

/** Refuses a sheet in which a formula is not as it was meant, is lost, or stands there unasked. */
export function refuseOtherFormulas(meant: MeantCells, after: Sheet, known: Known): void {
  const found = new Map<number, Cell>();
  for (const cell of after.cells) if (cell.formula !== undefined) found.set(keyOf(cell), cell);
  const refuseAt = ({ row, column }: Place): never =>
    refuse({ code: "not-as-meant", place: named(meant.sheet, row, column) });
  for (const wanted of meant.formulas) {
    const cell = found.get(keyOf(wanted));
    if (!cell || !isAsMeant(wanted, cell.formula, known) || !isOver(wanted.array, cell)) {
      refuseAt(wanted);
    }
    found.delete(keyOf(wanted));
  }
  for (const cell of meant.before?.cells ?? []) {
    if (cell.formula === undefined || meant.isReplaced(cell)) continue;
    const now = found.get(keyOf(cell));
    if (now?.formula !== cell.formula || !isOver(cell.array, now)) refuseAt(cell);
    found.delete(keyOf(cell));
  }
  for (const unasked of found.values()) refuseAt(unasked);
}

/**
 * A file of ours that cannot be opened again is not given to anybody.
 * @param from the file it was made from: what it holds byte for byte as that did is not read again
 */
export function readAgain(bytes: Uint8Array, from?: Package): Workbook {
  const after = answer(() => readWorkbook(new Package(bytes, from)));
  if (!isFileProblem(after)) return after;
  // what failed in the machine is told as that; the rest is a file that we made wrongly
  return refuse(after.fields.code === "failed" ? after.fields : { code: "not-read-back" });
}
