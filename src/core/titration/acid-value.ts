import { exact } from "../exact/exact";
import { atMost } from "../exact/compare";
import {
  type AcidValue,
  as,
  type Gram,
  type Millilitre,
  type MolePerKilogram,
  type MolePerLitre,
} from "../quantity/quantity";
import { type Outcome, problem } from "../problem/problem";
import { acidValueDefinition } from "../reference/compounds";
import { limits } from "../reference/limits";

const highest = exact(limits.acidValue.to);

/** An acid value no oil can have says that mass or strength is wrong. */
export const plausibleAcidValue = (value: AcidValue): Outcome<AcidValue> =>
  atMost(value, highest)
    ? value
    : problem({ code: "too-much-acid", quantity: "acid value", given: value, limit: highest });

/**
 * Acid value (ISO 660, EN 14104, AOCS Cd 3d-63): mg of KOH that would neutralise one gram of oil.
 *   AV = 56.1 c V / m
 * The 56.1 belongs to the definition, whichever base was in the burette.
 * @param correctedTitre mL, above 0
 * @param molarity mol/L of the titrant
 * @param sampleMass g of oil
 * @returns mg KOH/g, up to 400, unrounded (EN 14104 reports two decimals)
 * @example acidValue(5.20, 0.1003, 20.12) // 1.45425
 */
export const acidValue = (
  correctedTitre: Millilitre,
  molarity: MolePerLitre,
  sampleMass: Gram,
): Outcome<AcidValue> =>
  plausibleAcidValue(
    as("mg KOH/g", acidValueDefinition.times(molarity).times(correctedTitre).div(sampleMass)),
  );

/**
 * Moles of acid in a kilogram of oil: what every dose starts from. The 56.1 cancels here.
 * @example acidPerKilogram(5.61) // 0.1 mol/kg
 */
export const acidPerKilogram = (value: AcidValue): MolePerKilogram =>
  as("mol/kg", value.div(acidValueDefinition));
