/** What somebody used to weigh out, beside what the acid asks for. */
import { exact, hundred, one, zero } from "../exact/exact";
import { as, type Fraction, type Gram, type Percent } from "../quantity/quantity";

/** The dose of a batch, pure, and how pure the lye is. */
export interface DoseParts {
  readonly pureForAcid: Gram;
  readonly pureForReaction: Gram;
  readonly assay: Percent;
}

export interface FormerAmount {
  /** The former amount less the dose, g as weighed: below 0 when too little was weighed. */
  readonly difference: Gram;
  /** Of the acid, what stays when the reaction keeps its whole charge: 0 to 1. */
  readonly acidLeft: Fraction;
  /** Of the reaction's charge, what is left once the acid has taken its part: 0 when none is. */
  readonly chargeLeft: Fraction;
}

const within = (value: Fraction): Fraction => {
  if (value.isNegative()) return as("fraction", zero);
  return value.gt(one) ? as("fraction", one) : value;
};

/**
 * A former amount against the stoichiometric dose. Acid and base meet first, whatever one intends; so
 * both are said: what is missing counted as acid left over, and as charge the acid has eaten.
 *   acid left = (acid part + charge - former) / acid part      charge left = (former - acid part) / charge
 * @param former g of lye, as weighed
 * @example formerAmount(7.14, { 3.6348, 7, 100 % }) // -3.4948 g, 96.1 % of the acid, 50.1 % of the charge
 */
export function formerAmount(former: Gram, parts: DoseParts): FormerAmount {
  const { pureForAcid, pureForReaction, assay } = parts;
  const pure = former.times(assay).div(hundred);
  const dose = pureForAcid.plus(pureForReaction);
  return {
    difference: as("g", former.minus(dose.times(hundred).div(assay))),
    acidLeft: within(as("fraction", dose.minus(pure).div(pureForAcid))),
    chargeLeft: within(as("fraction", pure.minus(pureForAcid).div(pureForReaction))),
  };
}

/** How near, as a share of what the rule adds to the charge, an amount must come to it. */
const nearness = exact("0.25");

/**
 * Does an amount come from the rule "charge plus FFA fraction times charge"? It mixes a fraction of the
 * oil with a fraction of the lye and is never offered here; it is only recognised, to be put right. The
 * charge may have been divided by the assay or not.
 * @param former g of lye, as weighed
 * @param ffa % FFA as oleic
 */
export function isByFraction(former: Gram, ffa: Percent, parts: DoseParts): boolean {
  const { pureForReaction, assay } = parts;
  return [pureForReaction, pureForReaction.times(hundred).div(assay)].some((charge) => {
    const extra = charge.times(ffa).div(hundred);
    return former.minus(charge.plus(extra)).abs().lte(extra.times(nearness));
  });
}
