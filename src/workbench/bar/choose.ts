/** Open: a workbook that this browser kept, or a file of this machine. */
import type { Keeper } from "../keeping/keeper";
import type { Page } from "../page";
import { chooseOnDisk } from "./disk";
import type { Files } from "./files";
import { askWhichKept, type Shelf } from "./kept-list";
import type { News } from "./news";
import { reopen } from "./reopen";

export function chooser(
  page: Page,
  files: Files,
  keeper: Keeper,
  shelf: Shelf,
  news: News,
): () => Promise<void> {
  let isAsking = false;

  const choose = async (): Promise<void> => {
    const others = (await shelf.all().catch(() => [])).filter(({ id }) => id !== keeper.id);
    const answer = others.length === 0 ? "choose" : await askWhichKept(page, others, shelf);
    if (answer === "stay") return;
    if (answer === "choose") {
      const chosen = await chooseOnDisk();
      if (chosen === "by list") page.chooser.click();
      else if (chosen) await files.open(chosen.file, { disk: chosen.disk });
      return;
    }
    const kept = await shelf.get(answer.open).catch(() => undefined);
    if (kept) await reopen(kept, files, keeper);
    else news.refuse("This browser kept no more than the name of it: it cannot be opened.");
  };

  return async () => {
    if (isAsking) return;
    isAsking = true;
    await choose().finally(() => {
      isAsking = false;
    });
  };
}
