/** The task of the pane that something outside the pane opens: a store to watch. */
export interface Wanted {
  /** As the pane calls it: "bench". */
  readonly task: string;
  /** Another one each time it is asked for. */
  readonly turn: number;
}

export class WantedTask {
  private wanted: Wanted | undefined;
  private readonly listeners = new Set<() => void>();

  readonly current = (): Wanted | undefined => this.wanted;

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  open(task: string): void {
    this.wanted = { task, turn: (this.wanted?.turn ?? 0) + 1 };
    for (const listener of this.listeners) listener();
  }
}
