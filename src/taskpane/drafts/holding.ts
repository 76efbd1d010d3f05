/**
 * One draft, one writer. Two tabs on one draft would write over each other: the first holds it, the
 * others read it until they take it over, or the first is closed. By the browser's own locks; a browser
 * without them has no hold, and every tab writes.
 */

/** asking: not known yet, for a moment; lost: another tab has taken it over. */
export type Standing = "asking" | "writes" | "reads" | "lost";

/** How long the tab that holds a draft is given to write down what was typed there last, ms. */
const patience = 500;

interface Message {
  readonly says: "write it down" | "written down";
}

export class Holding {
  private isOver = false;
  private release: (() => void) | undefined;
  private waiting: AbortController | undefined;
  private readonly channel: BroadcastChannel | undefined;

  /**
   * @param told hears of each change
   * @param writeDown keeps what was typed last, before another takes over
   */
  constructor(
    private readonly name: string,
    private readonly told: (standing: Standing) => void,
    private readonly writeDown: () => Promise<void>,
    private readonly locks: LockManager | undefined = globalThis.navigator?.locks,
  ) {
    if (locks === undefined) {
      told("writes");
      return;
    }
    if (typeof BroadcastChannel === "function") {
      this.channel = new BroadcastChannel(name);
      this.channel.addEventListener("message", ({ data }: MessageEvent<Message>) => {
        if (data.says === "write it down" && this.release !== undefined) void this.oblige();
      });
    }
    void this.ask({ ifAvailable: true });
  }

  private async oblige(): Promise<void> {
    await this.writeDown().catch(() => undefined);
    this.channel?.postMessage({ says: "written down" } satisfies Message);
  }

  private async ask(options: LockOptions): Promise<void> {
    try {
      await this.locks?.request(this.name, options, (lock: Lock | null) => this.given(lock));
    } catch {
      // taken away by another tab; or waiting for it was given up here
      if (this.isOver || this.release === undefined) return;
      this.release = undefined;
      this.told("lost");
      this.wait();
    }
  }

  private given(lock: Lock | null): Promise<void> | undefined {
    if (this.isOver) return undefined;
    if (lock === null) {
      this.told("reads");
      this.wait();
      return undefined;
    }
    this.told("writes");
    return new Promise((done) => {
      this.release = done;
    });
  }

  /** Until the tab that holds it is closed. */
  private wait(): void {
    this.waiting = new AbortController();
    void this.ask({ signal: this.waiting.signal });
  }

  /** From whoever holds it now, once they have written down what was typed there. */
  async takeOver(): Promise<void> {
    if (this.locks === undefined || this.release !== undefined) return;
    const { channel } = this;
    if (channel) {
      await new Promise<void>((done) => {
        const heard = ({ data }: MessageEvent<Message>): void => {
          if (data.says !== "written down") return;
          channel.removeEventListener("message", heard);
          done();
        };
        channel.addEventListener("message", heard);
        setTimeout(done, patience);
        channel.postMessage({ says: "write it down" } satisfies Message);
      });
    }
    this.waiting?.abort();
    await this.ask({ steal: true });
  }

  end(): void {
    this.isOver = true;
    this.release?.();
    this.waiting?.abort();
    this.channel?.close();
  }
}
