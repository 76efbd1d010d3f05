/** Waits for a pause after edits in which the page has nothing else to do. */
import { type Timing, untilKept } from "./when";

/** While the page is at something else, ms. */
const again = 500;

export class Pause {
  private timer: ReturnType<typeof setTimeout> | undefined;
  private timing: Timing = { first: 0, last: 0, took: 0 };

  constructor(
    /** @param since the last edit, ms */
    private readonly isBusy: (since: number) => boolean,
    private readonly due: () => void,
  ) {}

  /** There was an edit. */
  edit(): void {
    const now = performance.now();
    const first = this.timer === undefined ? now : this.timing.first;
    this.timing = { ...this.timing, first, last: now };
    this.wait();
  }

  /** What was waited for took so long, ms. */
  took(time: number): void {
    this.timing = { ...this.timing, took: time };
  }

  end(): void {
    clearTimeout(this.timer);
    this.timer = undefined;
  }

  private wait(least = 0): void {
    clearTimeout(this.timer);
    const rest = untilKept(this.timing, performance.now());
    this.timer = setTimeout(() => this.look(), Math.max(least, rest));
  }

  private look(): void {
    if (this.isBusy(performance.now() - this.timing.last)) {
      this.wait(again);
      return;
    }
    this.timer = undefined;
    this.due();
  }
}
