import { exact, hundred, thousand } from "../exact/exact";
import {
  type AcidValue,
  as,
  type Gram,
  type Kilogram,
  type Litre,
  type Millilitre,
  type Percent,
} from "../quantity/quantity";
import type { Base } from "../reference/bases";
import { oleicAcid, sulfuricAcid } from "../reference/compounds";
import { methanolDensity, sulfuricAcidDensity } from "../reference/liquids";
import { acidPerKilogram } from "../titration/acid-value";

/** Grams for each gram of free fatty acid: Canakci and Van Gerpen 2001 (commonly cited). */
export const methanolPerGramOfAcid = exact("2.25");
export const sulfuricAcidPerGramOfAcid = exact("0.05");

/** Sulfuric acid gives up two protons. */
export const basePerSulfuricAcid = exact(2);

export interface Pretreatment {
  /** Free fatty acid in the batch, counted by mole as oleic. */
  readonly ffa: Kilogram;
  readonly methanol: Kilogram;
  readonly methanolVolume: Litre;
  /** As weighed. */
  readonly sulfuricAcid: Kilogram;
  readonly sulfuricAcidVolume: Millilitre;
  /** Base, as weighed, that would cancel all of that acid: at most, since some is drained. */
  readonly baseToCancel: Gram;
}

/**
 * What an acid step takes: 2.25 g of methanol and 0.05 g of sulfuric acid for each gram of acid.
 * @param assay percent, of the base
 * @param acidAssay percent, of the sulfuric acid
 */
export function pretreatment(
  oilMass: Kilogram,
  value: AcidValue,
  base: Base,
  assay: Percent,
  acidAssay: Percent,
): Pretreatment {
  const ffa = as("kg", oilMass.times(acidPerKilogram(value)).times(oleicAcid).div(thousand));
  const methanol = as("kg", ffa.times(methanolPerGramOfAcid));
  const pureAcid = ffa.times(sulfuricAcidPerGramOfAcid);
  const weighedAcid = as("kg", pureAcid.times(hundred).div(acidAssay));
  const moles = pureAcid.times(thousand).div(sulfuricAcid);
  return {
    ffa,
    methanol,
    methanolVolume: as("L", methanol.div(methanolDensity)),
    sulfuricAcid: weighedAcid,
    sulfuricAcidVolume: as("mL", weighedAcid.times(thousand).div(sulfuricAcidDensity)),
    baseToCancel: as(
      "g",
      moles.times(basePerSulfuricAcid).times(base.molarMass).times(hundred).div(assay),
    ),
  };
}

/** What to do after an acid step: the treated oil's own titration counts whatever acid is left. */
export const afterPretreatment =
  "Titrate the treated oil again and dose by that result alone: it counts sulfuric acid left in the oil as well (ISO 660), so it shows more than the FFA that is left. Aim: below 1 % FFA, best 0.5 to 1 % (commonly cited).";
