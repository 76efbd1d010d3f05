/** Opening, saving and acts on the file, one at a time: what is asked meanwhile is not done, but for a save. */
import { unexpected } from "../../taskpane/unexpected";
import type { News } from "./news";

export class OneAtATime {
  isBusy = false;
  private waiting: (() => Promise<unknown>) | undefined;

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
    const next = this.waiting;
    this.waiting = undefined;
    if (next) await this.do(next);
  }

  /** When what is being done has ended; asked several times, once. */
  afterwards(work: () => Promise<unknown>): void {
    this.waiting = work;
  }
}
