/** Choices drawn from a row of figures; where they end, each is the first one. */
export class Tape {
  private at = 0;
  constructor(private readonly figures: readonly number[]) {}
  /** 0 to below `most`. */
  next(most: number): number {
    const figure = this.figures[this.at] ?? 0;
    this.at += 1;
    return figure % most;
  }
  pick<T>(choices: readonly T[]): T {
    return choices[this.next(choices.length)] as T;
  }
  oneIn(many: number): boolean {
    return this.next(many) === many - 1;
  }
}
