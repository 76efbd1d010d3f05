/**
 * As soon as one of its buttons has the focus, the embedded spreadsheet gives it back to the cells. That
 * is right after a press of the mouse; with Tab nobody would ever come to a button, nor past one.
 */
export function letTabComeToButtons(container: HTMLElement): void {
  const listener = ({ target }: FocusEvent): void => {
    if (!(target instanceof HTMLButtonElement) || !container.contains(target)) return;
    const { uComp } = target.dataset;
    if (uComp === undefined || !target.matches(":focus-visible")) return;
    // by this name the spreadsheet knows what is not to keep the focus
    delete target.dataset.uComp;
    const again = () => {
      target.dataset.uComp = uComp;
    };
    target.addEventListener("blur", again, { once: true });
  };
  // Before the spreadsheet hears of it.
  window.addEventListener("focusin", listener, { capture: true });
}
