/** Says the selected cell in a live region: the grid is drawn on a canvas, which nothing can read out. */
import { isProblem } from "../core/problem/problem";
import { explainFormula } from "../workbook/explain/explain";
import { spreadsheetReason } from "../workbook/explain/spreadsheet-error";
import type { SelectedCell, Selection } from "./selection";

/** Titrations[[#This Row],[Mass g]] is said as [Mass g]. */
const spoken = (formula: string): string =>
  formula.slice(1).replace(/(?<!\w)\w+\[\[#This Row\],(\[[^\]]*\](?::\[[^\]]*\])?)\]/gi, "$1");

/** Why the cell shows an error; where it is held or spilled, that is said instead. */
function reason({ error, formula, lookup, held, spilledFrom }: SelectedCell): string | undefined {
  if (error === undefined || held !== undefined || spilledFrom) return undefined;
  const calls = formula === "" ? [] : explainFormula(formula, lookup);
  const ours = isProblem(calls) ? undefined : calls.find(({ problem }) => problem)?.problem;
  return ours?.says ?? spreadsheetReason(error, formula, lookup);
}

export function sentence(cell: SelectedCell): string {
  const { sheet, address, shown, formula, spilledFrom } = cell;
  const why = reason(cell);
  const parts = [`${sheet} ${address}`, shown === "" ? "empty" : shown];
  if (why !== undefined) parts.push(why.replace(/\.$/, ""));
  if (formula !== "") parts.push(`formula ${spoken(formula)}`);
  if (cell.held !== undefined) parts.push(`not worked out here. ${cell.held.replace(/\.$/, "")}`);
  if (cell.doubt !== undefined) parts.push(cell.doubt.replace(/\.$/, ""));
  if (spilledFrom) parts.push(`from the formula in ${spilledFrom.address}`);
  return `${parts.join(". ")}.`;
}

/** Long enough for a held arrow key to come to rest. */
const pause = 200;

export function announce(selection: Selection, region: HTMLElement): void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  selection.subscribe(() => {
    clearTimeout(timer);
    timer = setTimeout(() => {
      const cell = selection.current();
      const words = cell ? sentence(cell) : "";
      if (region.textContent !== words) region.textContent = words;
    }, pause);
  });
}
