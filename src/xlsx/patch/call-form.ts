/**
 * The spreadsheet program writes every call of an add-in's function, single values too, as an array
 * formula that spills by itself; files of ours hold single values plainly, since other programs then go
 * on showing them. A file that the program saved is followed in its form.
 */
import { isProblem } from "../../core/problem/problem";
import { readFormula } from "../../sheet/formula/read";
import { titreCalls } from "../../sheet/formula/walk";
import { isArrayNatured } from "../formulas/array-nature";
import { storedFormula, type StoredFormula } from "../formulas/to-file";
import type { Cell, Workbook } from "../model";
import type { SheetDraft } from "./sheet-draft";

const isOneArray = ({ array }: Cell): boolean =>
  array?.isDynamic === true && array.rows * array.columns === 1;

function isSingleCall(formula: string): boolean {
  if (!/TITRE/i.test(formula)) return false;
  const read = readFormula(formula);
  return !isProblem(read) && titreCalls(read.tree).length > 0 && !isArrayNatured(read.tree);
}

/** Was it saved by a program that writes single calls as arrays? */
export function callsAreArrays({ sheets }: Pick<Workbook, "sheets">): boolean {
  // a column has its formula in every row
  const seen = new Set<string>();
  return sheets.some(({ cells }) =>
    cells.some((cell) => {
      const { formula } = cell;
      if (formula === undefined || !isOneArray(cell) || seen.has(formula)) return false;
      seen.add(formula);
      return isSingleCall(formula);
    }),
  );
}

/** A formula as this sheet's file would hold it. */
export function storedOn(
  sheet: SheetDraft,
  shown: string,
  cell: string,
  table?: string,
): StoredFormula {
  const stored = storedFormula(shown, cell, table);
  return sheet.callsAreArrays && stored.callsUs ? { ...stored, isArray: true } : stored;
}
