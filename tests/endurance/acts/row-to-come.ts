/**
 * The row a titration goes to, from what the workbook holds: the first row of the table into which
 * nobody typed anything, else the first row below it. A row below it that holds anything is passed by
 * only when the next free one is asked for.
 */
import type { Column } from "../../../src/workbook/tables/column";
import { titrations } from "../../../src/workbook/tables/titrations";
import type { World } from "../world";

const headingsOf = (columns: readonly Column[]) => columns.map(({ heading }) => heading);

/** What a person types, and where a figure typed over is in the way; somebody's own columns are neither. */
const typedHere = headingsOf(titrations.columns.filter(({ formula }) => formula === undefined));
const results = headingsOf(titrations.columns.filter(({ formula }) => formula !== undefined));

/** What the model cannot foretell: a formula among the readings may be a column's or somebody's. */
const isFormula = (held: string): boolean => (JSON.parse(held) as [unknown, string])[1] !== "";

/** Undefined when there is no table, or where a formula stands among the readings. */
export function rowToCome(
  { workbook }: World,
  choice: "first" | "next free",
): { row: number; isFree: boolean } | undefined {
  const block = workbook.tableBlock("Titrations");
  if (!block) return undefined;
  const { sheet, row, column, rows, columns } = block;
  const headings = workbook.headings(block);
  const isInput = (at: number): boolean => typedHere.includes(headings[at] ?? "");
  const isResult = (at: number): boolean => results.includes(headings[at] ?? "");
  const heldIn = (at: number): [number, string][] =>
    Array.from({ length: columns }, (_, each) => each).flatMap((each): [number, string][] => {
      const held = workbook.present[`${sheet}!${String(at)},${String(column + each)}`];
      return held === undefined ? [] : [[each, held]];
    });
  for (let at = row + 1; at < row + rows; at += 1) {
    const typed = heldIn(at).filter(([each]) => isInput(each));
    const isFree = heldIn(at).every(([each, held]) => isFormula(held) || !isResult(each));
    if (typed.length === 0 && (isFree || choice === "first")) return { row: at, isFree };
    if (typed.length > 0 && typed.every(([, held]) => isFormula(held))) return undefined;
  }
  let at = row + rows;
  while (choice === "next free" && heldIn(at).length > 0) at += 1;
  return { row: at, isFree: heldIn(at).length === 0 };
}
