/**
 * On a narrow page sheet and pane share the height, and neither has much of it: a button each gives it all
 * of it. The other comes back at another press, and by itself when it gets the focus or, of the sheet,
 * when a cell of it is to be seen.
 */
import type { Page } from "./page";

type Part = "sheet" | "pane";
type Parts = Pick<Page, "work" | "sheet" | "pane" | "larger" | "sheetAlone">;

export class LargerPart {
  constructor(private readonly page: Parts) {
    page.larger.addEventListener("click", () => this.toggle("pane"));
    page.sheetAlone.addEventListener("click", () => this.toggle("sheet"));
    page.sheet.addEventListener("focusin", this.showSheet);
    page.pane.addEventListener("focusin", () => {
      if (this.larger === "sheet") this.set("none");
    });
  }

  readonly showSheet = (): void => {
    if (this.larger === "pane") this.set("none");
  };

  private get larger(): string {
    return this.page.work.dataset.larger ?? "none";
  }

  private toggle(part: Part): void {
    this.set(this.larger === part ? "none" : part);
  }

  private set(larger: Part | "none"): void {
    const { work, larger: pane, sheetAlone } = this.page;
    work.dataset.larger = larger;
    pane.textContent = larger === "pane" ? "Show sheet" : "Hide sheet";
    sheetAlone.textContent = larger === "sheet" ? "Show pane" : "Hide pane";
  }
}
