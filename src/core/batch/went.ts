/**
 * What the difference between weighed and worked out means. The words and the limits are the sheet's own
 * too: its formula under `It went` is made of them.
 */
import { type Exact, exact, hundred, thousand } from "../exact/exact";
import { as, type Gram, type Kilogram, type Percent } from "../quantity/quantity";

/** So much off is as meant: lye, methanol; so much is too much: fuel (common practice, no source). */
export const wentLimits = {
  lye: "0.01",
  methanol: "0.02",
  /** More fuel than this share of the oil is more than oil and methanol give. */
  made: "1.1",
} as const;

/** What the trial is called, on the card, for the fuel, in the tables and on paper. */
export const methanolTrial = "Methanol trial";
export const trialMix = "3 mL of fuel in 27 mL of methanol";

/** Seen in it: the fuel is not done. */
export const oilLeft = "oil at the bottom";
/** All that it may show. */
export const trialAnswers = ["clear", "cloudy", oilLeft] as const;
export type TrialAnswer = (typeof trialAnswers)[number];

/** Digits after the mark: a charge as it is typed, a molar ratio. */
export const wentPlaces = { charge: 3, ratio: 2 } as const;

export const wentWords = {
  asMeant: "Lye as meant.",
  none: "Too little lye: the acid took all of it, and none was left for the reaction.",
  less: "Less lye than meant: ",
  more: "More lye than meant: ",
  meant: " % of the oil was left for the reaction, not ",
  lessMeans: " %. Expect oil in the methanol trial.",
  moreMeans: " %. Expect more soap, and slow settling.",
  methanol: " Methanol ",
  toOne: " to 1, not ",
  made: " Fuel ",
  tooMuch:
    " % of the oil: more than it can give. Check the unit, and that it is settled and dried.",
  notDone: " Not done: oil was left in the methanol trial.",
  end: ".",
} as const;

export interface Weighed {
  /** g as weighed, worked out for `oil`. */
  readonly catalyst: Gram;
  /** g that were weighed. */
  readonly weighed: Gram;
  readonly oil: Kilogram;
  /** kg that went in. */
  readonly used: Kilogram;
  readonly assay: Percent;
  /** % of the oil, pure. */
  readonly charge: Percent;
  /** Half-width of the dose, g; undefined while it is not known. */
  readonly halfWidth: Gram | undefined;
}

/**
 * Pure base that was left for the reaction, % of the oil: the acid takes its part first.
 *   charge + assay/1000 x (weighed/used - catalyst/oil)
 * @example 91.5 kg, charge 0.765 %, catalyst 1046 g of 90 %, 910 g weighed // 0.6312
 */
export const chargeLeft = ({ catalyst, weighed, oil, used, assay, charge }: Weighed): Percent =>
  as("%", charge.plus(assay.div(thousand).times(weighed.div(used).minus(catalyst.div(oil)))));

/** In a sentence or two. */
export function lyeMeans(batch: Weighed): string {
  const { catalyst, weighed, oil, used, charge, halfWidth } = batch;
  const off = weighed.div(used).times(oil).minus(catalyst).abs();
  const least: Exact = catalyst.times(exact(wentLimits.lye));
  if (off.lte(least) || (halfWidth !== undefined && off.lte(halfWidth))) return wentWords.asMeant;
  const left = chargeLeft(batch);
  if (left.lte(0)) return wentWords.none;
  const isLess = left.lt(charge);
  const [begins, ends] = isLess
    ? [wentWords.less, wentWords.lessMeans]
    : [wentWords.more, wentWords.moreMeans];
  return `${begins}${left.toFixed(wentPlaces.charge)}${wentWords.meant}${charge.toFixed(wentPlaces.charge)}${ends}`;
}

/**
 * Litres of fuel for 100 litres of oil.
 * @param density of the oil at 20 C, kg/L
 */
export const yieldPercent = (litres: Exact, oil: Kilogram, density: Exact): Percent =>
  as("%", litres.times(density).div(oil).times(hundred));
