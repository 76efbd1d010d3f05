/** The pages of the build in dist, opened like the pane: served from this machine, and nothing else. */
import { type Served, serve } from "../browser/browser";
import type { PaneBrowser } from "../taskpane/page/open-page";

export type Opener = Pick<PaneBrowser, "open" | "close">;

/** What is asked for when a page is opened is its path: "", "help/index.html". */
export async function openBuilt(): Promise<Opener> {
  const served: Served = await serve();
  return {
    async open(options = {}, path = "") {
      const opened = await served.open({ locale: "en-GB", ...options });
      // the scenes begin before the grid is there
      await opened.page.goto(`${served.address}${path}`, { waitUntil: "domcontentloaded" });
      return opened;
    },
    close: () => served.close(),
  };
}
