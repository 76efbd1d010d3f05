/** Rows whose dose may be right as it was worked out, and whose acid or water is too much for a plain base batch. */
import { usual } from "../../../core/reference/defaults";
import { mostWater } from "../../../core/batch/route";
import { atMost } from "../../../core/exact/compare";
import { exact } from "../../../core/exact/exact";
import { isDose } from "../mistakes/mistake";
import type { CheckedRow } from "../judging/checked";
import { ffaPercent, fromNothing } from "../arithmetic/row-arithmetic";
import type { AboveLimit } from "./finding";
import { rowsInWords } from "./unchecked";

const limit = usual.limitFfa.toNumber();

type Share = readonly [row: number, percent: number];

export class AboveLimits {
  private readonly acid: Share[] = [];
  private readonly water: Share[] = [];

  /** @param waterIn % of water that a row says its oil holds */
  constructor(
    private readonly sheet: string,
    private readonly waterIn: (row: number) => number | undefined,
  ) {}

  look({ titration, figures }: CheckedRow): void {
    if (!figures.some(({ figure: { role } }) => isDose(role))) return;
    const { row } = titration;
    const share = ffaPercent(titration, {}, fromNothing);
    if (share !== undefined && share > limit) this.acid.push([row, share]);
    const water = this.waterIn(row);
    if (water !== undefined && !atMost(exact(water), mostWater)) this.water.push([row, water]);
  }

  found(): AboveLimit[] {
    const of = (kind: AboveLimit["of"], found: readonly Share[]): AboveLimit[] => {
      if (found.length === 0) return [];
      const shares = found.map(([, share]) => share);
      const least = shares.reduce((one, other) => Math.min(one, other));
      const most = shares.reduce((one, other) => Math.max(one, other));
      return [{ sheet: this.sheet, of: kind, rows: found.map(([row]) => row), least, most }];
    };
    return [...of("acid", this.acid), ...of("water", this.water)];
  }
}

/** "7.02 % FFA is above the limit of 5 %: lye alone will not do, blend it down or pretreat it (row 2)." */
export function aboveLimitWords({ of, rows, least, most, isAcross }: AboveLimit): string {
  const shown = (share: number): string =>
    of === "water" ? String(Number(share.toPrecision(4))) : share.toFixed(2);
  const [from, to] = [shown(least), shown(most)];
  const share = from === to ? from : `${from} to ${to}`;
  if (of === "water")
    return `${share} % water is above ${mostWater.toString()} %: dry the oil first, water makes soap (${rowsInWords(rows, isAcross)}).`;
  return `${share} % FFA is above the limit of ${String(limit)} %: lye alone will not do, blend it down or pretreat it (${rowsInWords(rows, isAcross)}).`;
}
