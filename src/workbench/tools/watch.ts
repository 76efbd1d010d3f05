/** The button Sheet and its keys. What they open is fetched when it is first asked for. */
import type { Grid } from "../grid/mount";
import type { Page } from "../page";
import type { News } from "../bar/news";

const tools = () => import(/* webpackChunkName: "tools" */ "./open");

export function watchTools(page: Page, grid: Grid, news: News): void {
  const bench = {
    page,
    grid,
    say: (sentence: string) => news.say(sentence),
    refuse: (sentence: string) => news.refuse(sentence),
  };
  const opened = () => tools().then(({ toolsOf }) => toolsOf(bench));
  page.tools.addEventListener("click", () => void opened().then(({ menu }) => menu.toggle()));
  page.tools.disabled = false;
}
