/** What the ± is made of: each cause's share of its square, largest first. */
import type { BenchFigures } from "../../core/uncertainty/bench";
import { contributions } from "../../core/uncertainty/contributions";
import { expand } from "../../core/uncertainty/expanded";
import { shareOf } from "../../core/uncertainty/shares";

export interface Share {
  readonly cause: string;
  /** Percent; all of them together are 100. */
  readonly percent: number;
}

/** Below this a bar is not seen. */
const leastShown = 0.5;

/**
 * @param isByVolume the sample was measured: its doubt stands in the place of the weighing
 * @returns empty when there is no doubt at all
 */
export function sharesOf(bench: BenchFigures, isByVolume: boolean): Share[] {
  const expanded = expand(bench);
  if (expanded.halfWidth === 0) return [];
  return contributions(bench)
    .map((each) => ({
      cause: each.source === "weighing" && isByVolume ? "sample by volume" : each.source,
      percent: shareOf(each, expanded),
    }))
    .filter(({ percent }) => percent >= leastShown)
    .sort((a, b) => b.percent - a.percent);
}
