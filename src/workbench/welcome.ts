/** The two ways a newcomer may go; a store to watch. It is over once one is gone, or a file is opened. */
export interface Ways {
  look(): void;
  begin(): void;
}

export class Welcome {
  private ways: Ways | undefined;
  private readonly listeners = new Set<() => void>();

  /** @param marked says on the page, at once, that the newcomer is asked */
  constructor(private readonly marked: HTMLElement) {}

  /** Undefined where nobody is asked. */
  readonly current = (): Ways | undefined => this.ways;

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  set(ways: Ways | undefined): void {
    this.ways = ways;
    this.marked.dataset.asks = ways ? "newcomer" : "";
    for (const listener of this.listeners) listener();
  }
}
