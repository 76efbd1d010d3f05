/**
 * F6 moves between the sheet and the pane. The grid keeps Tab for itself, so without this the keyboard
 * could not leave it.
 */
export function moveBetween(sheet: HTMLElement, pane: HTMLElement, intoSheet: () => void): void {
  const listener = (event: KeyboardEvent): void => {
    if (event.key !== "F6" || event.ctrlKey || event.altKey || event.metaKey) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    if (sheet.contains(document.activeElement)) pane.focus();
    else intoSheet();
  };
  // Before the grid's own listeners, which take every key.
  window.addEventListener("keydown", listener, { capture: true });
}
