/** Chance that can be had again: the same seed, the same choices. */

export class Chance {
  constructor(private state: number) {}

  /** From 0 up to, but not, 1. Mulberry32, a small generator in the public domain. */
  next(): number {
    this.state = (this.state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(this.state ^ (this.state >>> 15), 1 | this.state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  }

  /** A whole number, both ends included. */
  whole(least: number, most: number): number {
    return least + Math.floor(this.next() * (most - least + 1));
  }

  is(probability: number): boolean {
    return this.next() < probability;
  }

  of<T>(from: readonly T[]): T {
    return from[this.whole(0, from.length - 1)] as T;
  }

  some<T>(from: readonly T[]): T[] {
    return from.filter(() => this.is(0.5));
  }

  /** A figure as it is typed: two decimals, now and then with a comma. */
  figure(least: number, most: number): string {
    const text = (this.whole(least * 100, most * 100) / 100).toFixed(2);
    return this.is(0.1) ? text.replace(".", ",") : text;
  }

  /** One of several, each as likely as its weight. */
  weighted<T>(from: readonly (readonly [weight: number, what: T])[]): T {
    let left = this.next() * from.reduce((sum, [weight]) => sum + weight, 0);
    for (const [weight, what] of from) {
      left -= weight;
      if (left < 0) return what;
    }
    return (from[0] as readonly [number, T])[1];
  }
}
