/**
 * Cells that cannot follow rows and columns that move: those whose formulas hold addresses as texts, and
 * those that refer to a cell on several sheets at once, of which the rows moved on one. They are told, so
 * that somebody looks at them; nothing is refused for them.
 */
import { isProblem } from "../../core/problem/problem";
import type { CellPlace } from "../../sheet/area";
import { plainName } from "../../sheet/formula/names";
import { readFormula } from "../../sheet/formula/read";
import { sheetOf } from "../../sheet/formula/reference";
import type { Expression } from "../../sheet/formula/tree";
import { nodesOf } from "../../sheet/formula/walk";
import type { Workbook } from "../model";
import { isSameSheet } from "./sheets/in-formula";

export interface CannotFollow {
  /** INDIRECT reads an address out of a text. */
  readonly texts: readonly CellPlace[];
  /** May:July!B4, where the sheet is one of those. */
  readonly overSheets: readonly CellPlace[];
}

/** Worth reading at all? */
const mayHold = /INDIRECT|:[^!]*!/i;

const takesText = (node: Expression): boolean =>
  node.kind === "call" && node.link === "" && plainName(node.name) === "INDIRECT";

export function cannotFollow({ sheets }: Workbook, sheet: string): CannotFollow {
  const placeOf = (name: string): number =>
    sheets.findIndex((each) => isSameSheet(each.name, name));
  const place = placeOf(sheet);
  const isOver = (node: Expression): boolean => {
    const named = node.kind === "reference" ? sheetOf(node) : undefined;
    if (named?.last === undefined || named.workbook !== undefined) return false;
    const [from, to] = [placeOf(named.first), placeOf(named.last)].sort((a, b) => a - b);
    return from !== to && place >= (from ?? 0) && place <= (to ?? -1);
  };
  const found = sheets.flatMap(({ name, cells }) =>
    cells.flatMap(({ row, column, formula }) => {
      if (formula === undefined || !mayHold.test(formula)) return [];
      const read = readFormula(formula);
      if (isProblem(read)) return [];
      const nodes = [...nodesOf(read.tree)];
      const at = { sheet: name, row, column };
      return [{ at, isText: nodes.some(takesText), isOver: nodes.some(isOver) }];
    }),
  );
  return {
    texts: found.filter(({ isText }) => isText).map(({ at }) => at),
    overSheets: found.filter((each) => each.isOver).map(({ at }) => at),
  };
}
