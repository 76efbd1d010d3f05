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

/** Of the open workbook: is it anywhere but on the page? */
interface Safe {
  readonly isSafe: boolean;
  now(): Promise<unknown>;
}

/** Ctrl+O and Ctrl+S, before the browser and the grid take them. */
function watchKeys(files: Doing, choose: () => void): void {
  window.addEventListener(
    "keydown",
    (event) => {
      const isAlone = (event.ctrlKey || event.metaKey) && !event.altKey && !event.shiftKey;
      const key = isAlone ? event.key.toLowerCase() : "";
      if (key !== "s" && key !== "o") return;
      event.preventDefault();
      event.stopImmediatePropagation();
      if (key === "s") void files.save();
      else choose();
    },
    { capture: true },
  );
}

/** @param choose asks which workbook to open */
export function watchFiles(page: Page, files: Doing, keeper: Safe, choose: () => void): void {
  const { chooser } = page;
  page.open.addEventListener("click", choose);
  page.begin.addEventListener("click", () => void files.begin());
  page.save.addEventListener("click", () => void files.save());
  chooser.addEventListener("change", () => {
    const file = chooser.files?.[0];
    // the same file may be chosen again
    chooser.value = "";
    if (file) void files.open(file);
  });
  watchKeys(files, choose);
  watchDrops(document.body, (file) => void files.open(file));
  window.addEventListener("beforeunload", (event) => {
    if (keeper.isSafe && !files.isWriting) return;
    event.preventDefault();
    // done before an answer is given
    void keeper.now();
  });
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden" && !files.isWriting) void keeper.now();
  });
}
