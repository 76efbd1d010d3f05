/**
 * Who goes into the name box ends what was being typed: it stays in its cell. The embedded spreadsheet leaves
 * the editor open behind it, so that Enter would go to the row below and not to the address.
 */
const box = '[data-u-comp="defined-name"]';

export function endTypingAtNameBox(
  container: HTMLElement,
  isTyping: () => boolean,
  finish: () => Promise<void>,
): void {
  container.addEventListener(
    "focusin",
    ({ target }) => {
      if (!(target instanceof HTMLInputElement) || !target.closest(box) || !isTyping()) return;
      // the editor gives the keyboard to the cells as it closes
      void finish().then(() => {
        target.focus();
        target.select();
      });
    },
    { capture: true },
  );
}
