/** A formula as it reads some rows further down: relative references move, the rest stays. */
import { translateFormulaToA1, translateFormulaToR1C1 } from "@borgar/fx";

/**
 * What filling down writes.
 * @example movedDown("=A5*$B$1+Log[[#This Row],[Lot]]", 1) // "=A6*$B$1+Log[[#This Row],[Lot]]"
 */
export const movedDown = (formula: string, rows: number): string =>
  translateFormulaToA1(translateFormulaToR1C1(formula, "A1"), `A${String(1 + rows)}`, {
    wrapEdges: false,
  });
