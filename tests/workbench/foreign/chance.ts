/** Chance that can be had again by its seed: mulberry32. */
export class Chance {
  private state: number;

  constructor(seed: number) {
    this.state = (seed * 2_654_435_761) >>> 0;
  }

  /** From 0 up to 1. */
  next(): number {
    this.state = (this.state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(this.state ^ (this.state >>> 15), this.state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  }

  below(count: number): number {
    return Math.floor(this.next() * count);
  }

  one<T>(of: readonly T[]): T {
    return of[this.below(of.length)] as T;
  }

  is(share: number): boolean {
    return this.next() < share;
  }
}
