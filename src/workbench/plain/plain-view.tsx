/** Switches between the grid and plain tables of what it holds now. */
import { createRoot, type Root } from "react-dom/client";
import type { WorkbookCells } from "../engine/workbook-cells";
import type { Page } from "../page";
import type { Selection } from "../selection";
import { PlainBook } from "./plain-book";
import { plainSheets } from "./sheets";

export class PlainView {
  isShowing = true;
  private root: Root | undefined;

  constructor(
    private readonly page: Pick<Page, "sheet" | "plain" | "plainToggle">,
    private readonly cells: WorkbookCells,
    selection: Selection,
  ) {
    // Told of every new result, whichever cell is selected.
    selection.subscribe(() => this.draw());
  }

  toggle(): void {
    this.show(!this.isShowing);
  }

  show(isShowing: boolean): void {
    this.isShowing = isShowing;
    const { sheet, plainToggle } = this.page;
    sheet.dataset.showing = isShowing ? "plain" : "grid";
    plainToggle.setAttribute("aria-pressed", String(isShowing));
    this.draw();
  }

  private draw(): void {
    if (!this.isShowing) return;
    if (!this.root) {
      this.page.plain.replaceChildren();
      this.root = createRoot(this.page.plain);
    }
    this.root.render(<PlainBook sheets={plainSheets(this.cells)} />);
  }
}
