/** Says the selected cell in a live region: the grid is drawn on a canvas, which nothing can read out. */
import type { SelectedCell, Selection } from "./selection";

export function sentence({ sheet, address, shown, formula, spilledFrom }: SelectedCell): string {
  const parts = [`${sheet}, ${address}`, shown === "" ? "empty" : shown];
  if (formula !== "") parts.push(`formula ${formula.slice(1)}`);
  if (spilledFrom) parts.push(`from the formula in ${spilledFrom.address}`);
  return `${parts.join(": ")}.`;
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
