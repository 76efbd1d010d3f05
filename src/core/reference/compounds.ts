/** The compounds the arithmetic needs, each by its formula. Masses: g/mol, from atomic weights. */
import { quantity } from "../quantity/quantity";
import { molarMass } from "./molar-mass";

export const methanol = molarMass("CH4O");
export const glycerol = molarMass("C3H8O3");
export const water = molarMass("H2O");
export const sulfuricAcid = molarMass("H2SO4");
export const potassiumHydrogenPhthalate = molarMass("C8H5KO4");
export const oleicAcid = molarMass("C18H34O2");
export const oleate = molarMass("C18H33O2");
export const triolein = molarMass("C57H104O6");

/**
 * 56.1 g/mol defines the acid value (ISO 660, EN 14104, AOCS): mg of KOH per gram is a way to report,
 * fixed by those standards, and not the molar mass of the potassium hydroxide in the burette.
 */
export const acidValueDefinition = quantity("g/mol", "56.1");
