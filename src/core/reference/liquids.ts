/** Densities and thermal expansion of the liquids used. */
import { quantity } from "../quantity/quantity";

/** kg/L at 20 C (source: handbook, commonly cited). */
export const methanolDensity = quantity("kg/L", "0.7914");

/** kg/L at 20 C, 96 to 98 % sulfuric acid (source: handbook, commonly cited). */
export const sulfuricAcidDensity = quantity("kg/L", "1.84");

/** Change of volume for each degree, by the solvent of the titrant. */
export const titrantExpansion = {
  /** EN 14104, clause 10, note. */
  alcohol: quantity("1/C", "0.0011"),
  /** QUAM:2012, example A2. */
  water: quantity("1/C", "0.00021"),
} as const;

export type TitrantSolvent = keyof typeof titrantExpansion;
