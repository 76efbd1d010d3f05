import { hundred, ten } from "../exact/exact";
import {
  as,
  type Celsius,
  type GramPerLitre,
  type MoleRatio,
  type Percent,
} from "../quantity/quantity";
import { type Outcome, isProblem } from "../problem/problem";
import { methanol } from "../reference/compounds";
import { methanolDensity } from "../reference/liquids";
import type { Oil } from "../reference/oils";
import { densityAt } from "./density";

/**
 * A base charge quoted in grams per litre of oil, as percent of the oil's mass of pure base.
 *   charge = g/L (assay/100) / (10 density)
 * @param assay percent, of the lye that figure is for; 100 when it is quoted as pure
 * @example chargePercent(7, 100, density 0.915) // 0.765 %
 */
export function chargePercent(
  gramsPerLitre: GramPerLitre,
  assay: Percent,
  oil: Oil,
  temperature?: Celsius,
): Outcome<Percent> {
  const density = densityAt(oil, temperature);
  if (isProblem(density)) return density;
  return as("%", gramsPerLitre.times(assay).div(hundred.times(ten).times(density)));
}

/**
 * Methanol as moles per mole of triglyceride, from its share of the oil's volume.
 *   ratio = (v/100) (0.7914 / 32.042) / (density / Mtg)
 * @example molarRatio(20, oil not named) // 4.78
 */
export function molarRatio(
  volumePercent: Percent,
  oil: Oil,
  temperature?: Celsius,
): Outcome<MoleRatio> {
  const density = densityAt(oil, temperature);
  if (isProblem(density)) return density;
  const methanolShare = volumePercent.times(methanolDensity).times(oil.triglyceride);
  return as("mol/mol", methanolShare.div(hundred.times(methanol).times(density)));
}

/**
 * The other way round: litres of methanol for 100 litres of oil at 20 C, before any is taken off for its acid.
 * @example methanolPercent(6, oil not named) // 25.1
 */
export function methanolPercent(ratio: MoleRatio, oil: Oil): Outcome<Percent> {
  const density = densityAt(oil);
  if (isProblem(density)) return density;
  const litres = ratio.times(hundred).times(methanol).times(density);
  return as("%", litres.div(methanolDensity.times(oil.triglyceride)));
}
