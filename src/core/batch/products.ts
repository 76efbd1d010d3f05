/** What a batch makes at most: the mass balance of the reaction and of the neutralised acid. */
import { exact, thousand, zero } from "../exact/exact";
import { type AcidValue, as, type Gram, type Kilogram } from "../quantity/quantity";
import { type Outcome, isProblem } from "../problem/problem";
import type { Base } from "../reference/bases";
import { glycerol, methanol, water } from "../reference/compounds";
import type { Oil } from "../reference/oils";
import { acidPerKilogram } from "../titration/acid-value";
import { triglycerideFraction } from "./methanol";

const three = exact(3);

export interface Products {
  readonly biodiesel: Kilogram;
  readonly glycerol: Kilogram;
}

/**
 * Triglyceride + 3 methanol = 3 methyl ester + glycerol, if every molecule reacts.
 * @returns kg; nothing here allows for soap, washing or unreacted oil
 */
export function productsAtMost(oilMass: Kilogram, value: AcidValue, oil: Oil): Outcome<Products> {
  const share = triglycerideFraction(value);
  if (isProblem(share)) return share;
  const kilomoles = oilMass.times(share).div(oil.triglyceride);
  const ester = oil.triglyceride.plus(three.times(methanol)).minus(glycerol);
  return {
    biodiesel: as("kg", kilomoles.times(ester)),
    glycerol: as("kg", kilomoles.times(glycerol)),
  };
}

/** Water from neutralising: a mole for each mole of acid; a methoxide gives methanol instead. */
export const waterFromAcid = (oilMass: Kilogram, value: AcidValue, base: Base): Kilogram =>
  as(
    "kg",
    base.isMethoxide ? zero : oilMass.times(acidPerKilogram(value)).times(water).div(thousand),
  );

/** Water from hydroxide turning into methoxide in methanol: a mole for each mole, at most. */
export const waterFromBase = (pureForReaction: Gram, base: Base): Kilogram =>
  as(
    "kg",
    base.isMethoxide ? zero : pureForReaction.times(water).div(base.molarMass).div(thousand),
  );
