/**
 * On a narrow page sheet and pane share the height, and neither has much of it: a button gives the pane
 * all of it. The sheet comes back at another press, and by itself when it gets the focus or a cell of it
 * is to be seen.
 */
export class LargerPane {
  constructor(
    private readonly work: HTMLElement,
    private readonly button: HTMLButtonElement,
    sheet: HTMLElement,
  ) {
    button.addEventListener("click", () => {
      this.set(!this.isLarger);
    });
    sheet.addEventListener("focusin", this.showSheet);
  }

  readonly showSheet = (): void => {
    this.set(false);
  };

  private get isLarger(): boolean {
    return this.work.dataset.larger === "pane";
  }

  private set(isLarger: boolean): void {
    this.work.dataset.larger = isLarger ? "pane" : "none";
    this.button.setAttribute("aria-pressed", String(isLarger));
  }
}
