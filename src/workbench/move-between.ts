/**
 * F6 moves between the sheet and the pane. The grid keeps Tab for itself, so without this the keyboard
 * could not leave it.
 */

/** The grid hangs some of its parts beside the page: the editor of its formula line, its menus. */
const isInSheet = (focused: Element | null, sheet: HTMLElement): boolean =>
  sheet.contains(focused) || Boolean(focused?.closest("body > div"));

export function moveBetween(sheet: HTMLElement, pane: HTMLElement, intoSheet: () => void): void {
  const listener = (event: KeyboardEvent): void => {
    if (event.key !== "F6" || event.ctrlKey || event.altKey || event.metaKey) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    if (isInSheet(document.activeElement, sheet)) pane.focus();
    else intoSheet();
  };
  // Before the grid's own listeners, which take every key.
  window.addEventListener("keydown", listener, { capture: true });
}
