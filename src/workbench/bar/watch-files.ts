/** The ways in and out of a file: buttons, keys, dropping, and the page that is left. */
import type { Page } from "../page";
import { watchDrops } from "./drop";

interface Doing {
  /** Edits are on their way into a file, and in none yet. */
  readonly isWriting: boolean;
  begin(): Promise<void>;
  open(file: File): Promise<void>;
  save(): Promise<void>;
}

/** Ctrl+O and Ctrl+S, before the browser and the grid take them. */
function watchKeys(page: Pick<Page, "chooser">, files: Doing): void {
  window.addEventListener(
    "keydown",
    (event) => {
      const isAlone = (event.ctrlKey || event.metaKey) && !event.altKey && !event.shiftKey;
      const key = isAlone ? event.key.toLowerCase() : "";
      if (key !== "s" && key !== "o") return;
      event.preventDefault();
      event.stopImmediatePropagation();
      if (key === "s") void files.save();
      else page.chooser.click();
    },
    { capture: true },
  );
}

export function watchFiles(page: Page, files: Doing, edited: { readonly now: boolean }): void {
  const { chooser } = page;
  page.open.addEventListener("click", () => chooser.click());
  page.begin.addEventListener("click", () => void files.begin());
  page.save.addEventListener("click", () => void files.save());
  chooser.addEventListener("change", () => {
    const file = chooser.files?.[0];
    // the same file may be chosen again
    chooser.value = "";
    if (file) void files.open(file);
  });
  watchKeys(page, files);
  watchDrops(document.body, (file) => void files.open(file));
  window.addEventListener("beforeunload", (event) => {
    if (edited.now || files.isWriting) event.preventDefault();
  });
}
