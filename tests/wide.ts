/**
 * `npm test` goes every road that is gone every day. `npm test -- --wide` goes the rare ones too: every
 * screen light and dark and at 200 %, every width, what a browser refuses, the days by chance.
 */
import { it } from "vitest";
import { isWide } from "./is-wide";

/** Cases of every day, and where the run is wide those of rare days. */
export const cases = <Daily, Rare>(
  daily: readonly Daily[],
  rare: readonly Rare[],
): readonly (Daily | Rare)[] => (isWide ? [...daily, ...rare] : daily);

/** A test of a rare road: there is none of it in a run of every day. */
export function rarely(title: string, test: () => Promise<void>): void {
  if (isWide) it(title, test);
}
