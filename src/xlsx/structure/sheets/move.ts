/** A sheet is put at another place among the others. */
import type { Workbook } from "../../model";
import type { Package } from "../../package/package";
import { refuse } from "../../problem";
import { isSameSheet } from "./in-formula";
import { relist } from "./list";
import { sheetsIn } from "./sheets-in";
import { retitle } from "./titles";

/** The places of the sheets as they then come. @param to the place among those that have cells */
function ordered(opened: Workbook, from: number, to: number): number[] {
  const others = opened.sheets.map((_, place) => place).filter((place) => place !== from);
  const cells = others.filter((place) => opened.sheets[place]?.kind === "cells");
  const before = cells[to];
  const at = before === undefined ? others.length : others.indexOf(before);
  return [...others.slice(0, at), from, ...others.slice(at)];
}

/** SUM(First:Last!A1) takes all that lies between: with its ends the other way round it is another. */
function refuseTurnedRanges(opened: Workbook, order: readonly number[], moved: string): void {
  const names = opened.sheets.map(({ name }) => name);
  const place = (name: string) => order.findIndex((old) => isSameSheet(names[old], name));
  const isTurned = (formula: string): boolean =>
    sheetsIn(formula).some(({ workbook, first, last }) => {
      if (workbook !== undefined || last === undefined) return false;
      const isEnd = isSameSheet(first, moved) || isSameSheet(last, moved);
      return isEnd && place(first) > place(last);
    });
  const formulas = [
    ...opened.sheets.flatMap(({ cells }) => cells.map(({ formula }) => formula)),
    ...opened.names.map(({ refersTo }) => refersTo),
  ];
  const isAny = formulas.some(
    (formula) => formula?.includes("!") === true && formula.includes(":") && isTurned(formula),
  );
  if (isAny) refuse({ code: "ends-a-range", sheet: moved });
}

export function moveSheet(file: Package, opened: Workbook, sheet: string, to: number): void {
  const from = opened.sheets.findIndex(({ name }) => isSameSheet(name, sheet));
  if (from < 0) refuse({ code: "no-sheet", name: sheet });
  const order = ordered(opened, from, to);
  refuseTurnedRanges(opened, order, sheet);
  relist(file, order);
  retitle(file);
}
