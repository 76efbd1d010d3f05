/** All the water of a batch as a sentence: where most of it comes from, and what would bring less. */
import { shown } from "../exact/rounding";
import type { Exact } from "../exact/exact";
import { mostWater } from "./route";
import type { Water } from "./water";

export const waterDigits = 3;

type Part = "inOil" | "fromAcid" | "fromBase" | "inLye" | "inMethanol";

/** In the order of the table: of two equal parts the first is named. */
export const waterAdvice: readonly (readonly [Part, string])[] = [
  ["inOil", "the oil: settle and dry it"],
  ["fromAcid", "the acid: blend the oil or pretreat it"],
  ["fromBase", "base and methanol: a methoxide makes none"],
  ["inLye", "the lye: a drier one, of higher assay, brings less"],
  ["inMethanol", "the methanol: a drier one brings less"],
];

export const waterSentence = (percent: string, most: string): string =>
  `${percent} % of the oil's mass at most; most of it by ${most}.`;

/**
 * What is said of the oil's own water where a batch is weighed out or made: unless it is known to be little.
 * @param measured percent of the oil's mass; left out: not measured
 */
export function waterOfOil(measured: Exact | undefined): string | undefined {
  if (measured === undefined)
    return "The oil’s water is not measured: dry the oil until no more steam comes, or measure it.";
  return measured.gt(mostWater)
    ? `Too wet: ${shown(measured)} % water. Dry the oil to ${shown(mostWater)} % or less before anything is weighed.`
    : undefined;
}

/** @returns one sentence; some water there always is */
export function waterInWords(found: Water): string {
  const [first] = waterAdvice;
  const most = waterAdvice.reduce(
    (largest, each) => (found[each[0]].gt(found[largest[0]]) ? each : largest),
    first as (typeof waterAdvice)[number],
  );
  const percent: Exact = found.percent.toSignificantDigits(waterDigits);
  return waterSentence(shown(percent), most[1]);
}
