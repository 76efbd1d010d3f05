/** The button Sheet and its keys. What they open is fetched when it is first asked for. */
import { IUndoRedoService } from "@univerjs/core";
import type { Grid } from "../grid/mount";
import type { Page } from "../page";
import type { News } from "../bar/news";
import { ToldOfAct } from "./told-of-act";

const tools = () => import(/* webpackChunkName: "tools" */ "./open");

export function watchTools(page: Page, grid: Grid, news: News): void {
  const told = new ToldOfAct(news);
  grid.injector.get(IUndoRedoService).undoRedoStatus$.subscribe((steps) => told.steps(steps));
  const bench = {
    page,
    grid,
    say: (sentence: string) => news.say(sentence),
    sayOfAct: (sentence: string, undone: string) => told.say(sentence, undone),
    refuse: (sentence: string) => news.refuse(sentence),
  };
  const opened = () => tools().then(({ toolsOf }) => toolsOf(bench));
  page.tools.addEventListener("click", () => void opened().then(({ menu }) => menu.toggle()));
  page.tools.disabled = false;
  const tool = (event: KeyboardEvent): "find" | undefined => {
    const isAlone = (event.ctrlKey || event.metaKey) && !event.altKey && !event.shiftKey;
    if (!isAlone || page.sheet.dataset.showing !== "grid") return undefined;
    // in the pane, the browser's own search
    const isOurs = !page.pane.contains(document.activeElement);
    return isOurs && event.key.toLowerCase() === "f" ? "find" : undefined;
  };
  // before the browser and the grid take them
  const listener = (event: KeyboardEvent): void => {
    const wanted = tool(event);
    if (!wanted) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    void opened().then((made) => made[wanted](bench));
  };
  window.addEventListener("keydown", listener, { capture: true });
}
