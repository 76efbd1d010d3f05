/** How many formulas an act takes something from that they refer to, and how many it cannot follow. */
import type { StructuralAct, Workbook } from "../../xlsx";
import { keyOf } from "../file/opened-file";
import { cameFrom } from "./came-from";

type Sheets = Pick<Workbook, "sheets">;

const isLost = (formula: string | undefined): boolean => formula?.includes("#REF!") === true;

export function lostIn(act: StructuralAct, before: Sheets, after: Sheets): number {
  if (!act.do.startsWith("delete")) return 0;
  const formulas = new Map(
    before.sheets.map(({ name, cells }) => [
      name,
      new Map(cells.map(({ row, column, formula }) => [keyOf(row, column), formula])),
    ]),
  );
  let lost = 0;
  for (const { name, cells } of after.sheets) {
    for (const { row, column, formula } of cells) {
      if (!isLost(formula)) continue;
      const from = cameFrom(act, { sheet: name, row, column });
      const was = from && formulas.get(from.sheet)?.get(keyOf(from.row, from.column));
      if (!isLost(was)) lost += 1;
    }
  }
  return lost;
}

const readsByText = /\bINDIRECT\s*\(/i;

/** How many formulas are told by a text which cells they read: no act changes it. */
export const readByText = ({ sheets }: Sheets): number =>
  sheets.reduce(
    (sum, { cells }) =>
      sum +
      cells.filter(({ formula }) => formula !== undefined && readsByText.test(formula)).length,
    0,
  );
