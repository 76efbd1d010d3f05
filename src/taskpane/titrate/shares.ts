/** What the ± is made of: each cause's share of its square, largest first. */
import type { BenchFigures } from "../../core/uncertainty/bench";
import { asFfa, contributions } from "../../core/uncertainty/contributions";
import { expand } from "../../core/uncertainty/expanded";
import { normal95 } from "../../core/uncertainty/standard-uncertainty";

export interface Share {
  readonly cause: string;
  /** Percent; all of them together are 100. */
  readonly percent: number;
}

/** Below this a bar is not seen. */
const leastShown = 0.5;

/**
 * Scatter counts with its Student t and the rest with 1.96, as in the ± itself, so that the largest
 * bar is where the largest gain lies.
 * @param isByVolume the sample was measured: its doubt stands in the place of the weighing
 * @returns empty when there is no doubt at all
 */
export function sharesOf(bench: BenchFigures, isByVolume: boolean): Share[] {
  const { halfWidth, t } = expand(bench);
  if (halfWidth === 0) return [];
  return contributions(bench)
    .map((each) => ({
      cause: each.source === "weighing" && isByVolume ? "sample by volume" : each.source,
      percent: 100 * (((each.isScatter ? t : normal95) * asFfa(each)) / halfWidth) ** 2,
    }))
    .filter(({ percent }) => percent >= leastShown)
    .sort((a, b) => b.percent - a.percent);
}
