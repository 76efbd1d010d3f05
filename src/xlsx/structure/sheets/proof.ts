/**
 * A file in which a sheet was renamed, moved or deleted, read back: each cell holds what it held, and each
 * formula is the one of before, but for that sheet.
 */
import { isProblem } from "../../../core/problem/problem";
import { cellName } from "../../../sheet/cell-name";
import { readFormula } from "../../../sheet/formula/read";
import { sheetOf } from "../../../sheet/formula/reference";
import { splice } from "../../../sheet/formula/splice";
import type { Expression } from "../../../sheet/formula/tree";
import { nodesOf } from "../../../sheet/formula/walk";
import type { Cell, Sheet, Workbook } from "../../model";
import { refuse } from "../../problem";
import type { SheetAct } from "../act";
import { isSameSheet } from "./in-formula";
import { type NamedSheet, sheetsIn } from "./sheets-in";

/** Sheets as they are meant, however they are written, and all else as it is. */
function said(formula: string, nameOf: (sheet: string) => string): string {
  const read = readFormula(formula);
  // what cannot be read as a whole, several areas of a name, is taken by its tokens
  const found = isProblem(read) ? sheetsIn(formula) : ofReferences(read.tree);
  const changes = found.flatMap(({ start, end, workbook, first, last }) =>
    workbook === undefined
      ? [{ start, end, text: `<${nameOf(first)}|${last === undefined ? "" : nameOf(last)}>` }]
      : [],
  );
  return splice(formula, changes);
}

/** By the tree, where the writing went by tokens. */
const ofReferences = (tree: Expression): NamedSheet[] =>
  [...nodesOf(tree)].flatMap((node): NamedSheet[] => {
    const sheets = node.kind === "reference" ? sheetOf(node) : undefined;
    if (!sheets || node.kind !== "reference") return [];
    const end = node.start + node.text.lastIndexOf("!");
    return [{ start: node.start, end, ...sheets }];
  });

const same = (name: string): string => name.toLowerCase();

/** Is the formula the one that was meant? */
function isMeant(act: SheetAct, before: string, after: string): boolean {
  if (act.do === "move-sheet") return before === after;
  if (act.do === "rename-sheet") {
    if (before === after) return !names(before, act.sheet) || isSameSheet(act.sheet, act.name);
    const meant = said(before, (sheet) =>
      isSameSheet(sheet, act.sheet) ? same(act.name) : same(sheet),
    );
    return meant === said(after, same);
  }
  return before === after ? !names(before, act.sheet) : !names(after, act.sheet);
}

/** Does a reference of it name the sheet? */
function names(formula: string, sheet: string): boolean {
  if (!formula.includes("!")) return false;
  let isNamed = false;
  said(formula, (name) => {
    isNamed ||= isSameSheet(name, sheet);
    return name;
  });
  return isNamed;
}

const isSameValue = (a: Cell["value"], b: Cell["value"]): boolean =>
  typeof a === "object" && typeof b === "object" ? a.error === b.error : a === b;

function refuseOther(act: SheetAct, before: Sheet, after: Sheet): void {
  const isKept =
    before.cells.length === after.cells.length &&
    before.kind === after.kind &&
    before.state === after.state;
  if (!isKept) refuse({ code: "not-as-meant", place: after.name });
  for (const [index, cell] of before.cells.entries()) {
    const now = after.cells[index];
    const isMoved = now?.row !== cell.row || now.column !== cell.column;
    const isOther =
      isMoved ||
      now.look !== cell.look ||
      !isSameValue(now.value, cell.value) ||
      (now.formula === undefined) !== (cell.formula === undefined) ||
      !isMeant(act, cell.formula ?? "", now.formula ?? "");
    if (isOther) {
      refuse({ code: "not-as-meant", place: `${after.name}!${cellName(cell.row, cell.column)}` });
    }
  }
}

/** The sheets of before, as they are to come now. */
function meantOrder(act: SheetAct, before: Workbook, after: Workbook): Sheet[] {
  const others = before.sheets.filter(({ name }) => !isSameSheet(name, act.sheet));
  if (act.do === "delete-sheet") return others;
  if (act.do === "rename-sheet") return [...before.sheets];
  const moved = before.sheets.filter((each) => !others.includes(each));
  const at = after.sheets.findIndex(({ name }) => isSameSheet(name, act.sheet));
  const cells = after.sheets.slice(0, at).filter(({ kind }) => kind === "cells").length;
  const all = others.filter(({ kind }) => kind === "cells").length;
  if (cells !== Math.min(act.to, all)) refuse({ code: "not-as-meant", place: act.sheet });
  return [...others.slice(0, at), ...moved, ...others.slice(at)];
}

/** The names of before that are to be there still, with their sheets as they are called now. */
function refuseOtherNames(act: SheetAct, before: Workbook, after: Workbook): void {
  const nameOf = (sheet: string | undefined) =>
    act.do === "rename-sheet" && isSameSheet(sheet, act.sheet) ? act.name : sheet;
  const kept = before.names.filter(
    ({ sheet }) => act.do !== "delete-sheet" || !isSameSheet(sheet, act.sheet),
  );
  const isSame =
    kept.length === after.names.length &&
    kept.every((each, index) => {
      const now = after.names[index];
      return (
        now?.name === each.name &&
        now.sheet === nameOf(each.sheet) &&
        isMeant(act, each.refersTo, now.refersTo)
      );
    });
  if (!isSame) refuse({ code: "not-as-meant", place: "a defined name" });
}

export function refuseOtherwise(act: SheetAct, before: Workbook, after: Workbook): void {
  const meant = meantOrder(act, before, after);
  if (meant.length !== after.sheets.length) refuse({ code: "not-as-meant", place: act.sheet });
  for (const [index, sheet] of meant.entries()) {
    const now = after.sheets[index] as Sheet;
    const isRenamed = act.do === "rename-sheet" && isSameSheet(sheet.name, act.sheet);
    if (now.name !== (isRenamed ? act.name : sheet.name)) {
      refuse({ code: "not-as-meant", place: sheet.name });
    }
    refuseOther(act, sheet, now);
  }
  refuseOtherNames(act, before, after);
}
