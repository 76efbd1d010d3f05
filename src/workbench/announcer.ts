/** Says the selected cell in a live region: the grid is drawn on a canvas, which nothing can read out. */
import { isProblem } from "../core/problem/problem";
import { explainFormula } from "../workbook/explain/explain";
import type { SelectedCell, Selection } from "./selection";

/** Titrations[[#This Row],[Mass g]] is said as [Mass g]. */
const spoken = (formula: string): string =>
  formula.slice(1).replace(/(?<!\w)\w+\[\[#This Row\],(\[[^\]]*\](?::\[[^\]]*\])?)\]/gi, "$1");

/** Why the cell shows an error, where one of our functions can say so. */
function reason({ formula, lookup }: SelectedCell): string | undefined {
  const calls = formula === "" ? [] : explainFormula(formula, lookup);
  return isProblem(calls) ? undefined : calls.find(({ problem }) => problem)?.problem?.says;
}

const isError = ({ value }: SelectedCell): boolean => typeof value === "object" && value !== null;

export function sentence(cell: SelectedCell): string {
  const { sheet, address, shown, formula, spilledFrom } = cell;
  const why = isError(cell) ? reason(cell) : undefined;
  const parts = [`${sheet} ${address}`, shown === "" ? "empty" : shown];
  if (why !== undefined) parts.push(why.replace(/\.$/, ""));
  if (formula !== "") parts.push(`formula ${spoken(formula)}`);
  if (cell.held !== undefined) parts.push(`not worked out here. ${cell.held.replace(/\.$/, "")}`);
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
