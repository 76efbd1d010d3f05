/** Switches between the grid and plain tables of what it holds now. */
import { createRoot, type Root } from "react-dom/client";
import type { WorkbookCells } from "../engine/workbook-cells";
import type { Page } from "../page";
import { PlainBook } from "./plain-book";
import { plainSheets } from "./sheets";

export class PlainView {
  isShowing = true;
  private root: Root | undefined;

  constructor(
    private readonly page: Pick<Page, "sheet" | "plain" | "plainToggle">,
    private readonly cells: WorkbookCells,
  ) {}

  toggle(): void {
    this.show(!this.isShowing);
  }

  show(isShowing: boolean): void {
    this.isShowing = isShowing;
    const { sheet, plain, plainToggle } = this.page;
    sheet.dataset.showing = isShowing ? "plain" : "grid";
    plainToggle.setAttribute("aria-pressed", String(isShowing));
    if (!isShowing) return;
    if (!this.root) {
      plain.replaceChildren();
      this.root = createRoot(plain);
    }
    this.root.render(<PlainBook sheets={plainSheets(this.cells)} />);
  }
}
