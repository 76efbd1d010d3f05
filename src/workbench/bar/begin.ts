/** What the page begins with: the workbook that this browser kept, or the example. */
import type { Keeper } from "../keeping/keeper";
import type { ToOpen } from "../keeping/to-open";
import type { Page } from "../page";
import type { Files } from "./files";
import type { News } from "./news";
import { reopen } from "./reopen";

/** Said before the spreadsheet is there, in place of the example's tables. */
export function announceKept({ plain, loading }: Page, found: ToOpen): void {
  if (found.what !== "kept") return;
  plain.hidden = true;
  loading.textContent = `Opening ${found.kept.entry.name}, which this browser kept.`;
}

export async function begin(
  { plain }: Page,
  found: ToOpen,
  files: Files,
  keeper: Keeper,
  news: News,
): Promise<void> {
  if (found.what === "broken") news.refuse(found.sentence);
  if (found.what !== "kept") return;
  const isOpen = await reopen(found.kept, files, keeper);
  plain.hidden = false;
  if (!isOpen) return;
  news.offer("Begin with the example again", () => {
    void keeper.drop().then(() => location.reload());
  });
}
