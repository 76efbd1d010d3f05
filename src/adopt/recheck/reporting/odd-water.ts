/** Water that no oil holds: told with its figures, one line a reason, since a whole column may be in another unit. */
import type { OddWater } from "../reading/read-water";
import type { Unchecked } from "./finding";

interface Odd {
  readonly rows: number[];
  readonly figures: number[];
}

export class OddWaters {
  private readonly byWhy = new Map<string, Odd>();

  /** @param named what the column is called */
  constructor(
    private readonly sheet: string,
    private readonly named: string,
  ) {}

  look(row: number, odd: OddWater | undefined): void {
    if (!odd) return;
    const key = `${odd.unit}, ${odd.why}`;
    const known = this.byWhy.get(key) ?? { rows: [], figures: [] };
    known.rows.push(row);
    known.figures.push(odd.figure);
    this.byWhy.set(key, known);
  }

  found(): Unchecked[] {
    return [...this.byWhy].map(([why, { rows, figures }]) => {
      const least = figures.reduce((one, other) => Math.min(one, other));
      const most = figures.reduce((one, other) => Math.max(one, other));
      const shown = least === most ? String(least) : `${String(least)} to ${String(most)}`;
      return { sheet: this.sheet, why: `${this.named} holds ${shown} ${why}`, rows };
    });
  }
}
