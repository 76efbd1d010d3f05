/** Opening and saving, one at a time: what is asked meanwhile is not done. */
import { unexpected } from "../../taskpane/unexpected";
import type { News } from "./news";

export class OneAtATime {
  isBusy = false;

  constructor(private readonly news: Pick<News, "refuse">) {}

  async do(work: () => Promise<unknown>): Promise<void> {
    if (this.isBusy) return;
    this.isBusy = true;
    try {
      await work();
    } catch (thrown) {
      unexpected(thrown);
      this.news.refuse(
        "That did not work. Look whether the workbook is as you left it: try again.",
      );
    } finally {
      this.isBusy = false;
    }
  }
}
