/** Rows whose dose may be right as it was worked out, and whose acid is too much for a plain base batch. */
import { usual } from "../../../core/reference/defaults";
import { isDose } from "../mistakes/mistake";
import type { CheckedRow } from "../judging/checked";
import { ffaPercent, fromNothing } from "../arithmetic/row-arithmetic";
import type { AboveLimit } from "./finding";
import { rowsInWords } from "./unchecked";

const limit = usual.limitFfa.toNumber();

export class AboveLimits {
  private readonly rows: number[] = [];
  private readonly shares: number[] = [];

  constructor(private readonly sheet: string) {}

  look({ titration, figures }: CheckedRow): void {
    if (!figures.some(({ figure: { role } }) => isDose(role))) return;
    const share = ffaPercent(titration, {}, fromNothing);
    if (share === undefined || share <= limit) return;
    this.rows.push(titration.row);
    this.shares.push(share);
  }

  found(): AboveLimit[] {
    const { sheet, rows, shares } = this;
    if (rows.length === 0) return [];
    const least = shares.reduce((one, other) => Math.min(one, other));
    const most = shares.reduce((one, other) => Math.max(one, other));
    return [{ sheet, rows, least, most }];
  }
}

/** "7.02 % FFA is above the limit of 5 %: not a plain base batch; see ROUTE (row 2)." */
export function aboveLimitWords({ rows, least, most, isAcross }: AboveLimit): string {
  const [from, to] = [least.toFixed(2), most.toFixed(2)];
  const share = from === to ? from : `${from} to ${to}`;
  return `${share} % FFA is above the limit of ${String(limit)} %: not a plain base batch; see ROUTE (${rowsInWords(rows, isAcross)}).`;
}
