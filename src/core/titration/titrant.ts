import { hundred, one, thousand } from "../exact/exact";
import {
  as,
  type Celsius,
  type Gram,
  type GramPerLitre,
  type Litre,
  type Millilitre,
  type MolePerLitre,
  type Percent,
  type PerCelsius,
} from "../quantity/quantity";
import type { Base } from "../reference/bases";
import { potassiumHydrogenPhthalate } from "../reference/compounds";

/**
 * Strength of a titrant made by weighing.
 *   c = m (assay/100) / (M V)
 * @example molarity(1.0, 1.0, KOH, 100) // 0.017824 mol/L: 0.1 % w/v
 */
export const molarityByWeighing = (
  mass: Gram,
  volume: Litre,
  base: Base,
  assay: Percent,
): MolePerLitre => as("mol/L", mass.times(assay).div(hundred.times(base.molarMass).times(volume)));

/**
 * Grams to weigh for a titrant of a wanted strength.
 *   m = c V M / (assay/100)
 * @example titrantMass(0.1, 0.5, NaOH, 98) // 2.04065 g
 */
export const titrantMass = (
  molarity: MolePerLitre,
  volume: Litre,
  base: Base,
  assay: Percent,
): Gram => as("g", molarity.times(volume).times(base.molarMass).times(hundred).div(assay));

/**
 * Strength against potassium hydrogen phthalate (KHP).
 *   c = 1000 m P / (M V)
 * @param mass g of KHP
 * @param correctedTitre mL
 * @param purity percent
 * @example molarityFromPhthalate(0.5105, 25.00, 100) // 0.0999891 mol/L
 */
export const molarityFromPhthalate = (
  mass: Gram,
  correctedTitre: Millilitre,
  purity: Percent,
): MolePerLitre =>
  as(
    "mol/L",
    thousand
      .times(mass)
      .times(purity)
      .div(hundred.times(potassiumHydrogenPhthalate).times(correctedTitre)),
  );

/**
 * A titre as it would have read at the temperature where the strength was set (EN 14104, note).
 *   V' = V (1 - x (t - t0))
 * @example temperatureCorrected(10.00, 28, 20, 0.0011) // 9.912 mL
 */
export const temperatureCorrected = (
  titre: Millilitre,
  readAt: Celsius,
  setAt: Celsius,
  expansion: PerCelsius,
): Millilitre => as("mL", titre.times(one.minus(expansion.times(readAt.minus(setAt)))));

/**
 * Grams of the same lye, from the same lot, per litre of oil, for the acid part alone. Density, molar
 * mass and assay cancel: 1 mL of 1 g/L on 1 mL of oil is 1 g/L.
 *   dose = V s / Voil
 * @example perLitre(2.3, 1.0, 1.0) // 2.3 g/L
 */
export const perLitre = (
  correctedTitre: Millilitre,
  titrantStrength: GramPerLitre,
  sampleVolume: Millilitre,
): GramPerLitre => as("g/L", correctedTitre.times(titrantStrength).div(sampleVolume));
