/** The arguments that several functions share: said once, so that they mean the same everywhere. */
import { limits } from "../core/reference/limits";
import { usual } from "../core/reference/defaults";
import { list, number, optionalNumber, usualNumber } from "./arguments";

export const titres = list(
  limits.reading,
  "titre",
  "Replicate titres, mL. Empty cells are ignored.",
);

export const sampleMasses = list(
  limits.sampleMass,
  "sample mass",
  "Grams of oil in each titration, in the same order; one cell serves all.",
);

export const correctedTitre = number(
  limits.reading,
  "corrected titre",
  "Mean titre less mean blank, mL.",
);

export const molarity = number(limits.molarity, "titrant strength", "Titrant strength, mol/L.");

export const sampleMass = number(
  limits.sampleMass,
  "sample mass",
  "Grams of oil in one titration.",
);

export const acidValue = number(limits.acidValue, "acid value", "Acid value of the oil, mg KOH/g.");

export const oilMass = number(limits.oilMass, "oil mass", "Kilograms of oil in the batch.");

export const assayPercent = number(
  limits.assay,
  "assay",
  "How much of the lye as weighed is base, in percent: 90, not 0.90.",
);

export const baseCharge = number(
  limits.baseCharge,
  "base charge",
  "Pure base for the reaction, as percent of the oil's mass.",
);

export const limitFfaPercent = usualNumber(
  limits.ffaLimit,
  usual.limitFfa,
  "No dose above this % FFA, as oleic. A higher figure says you mean to go on.",
);

export const molarRatio = usualNumber(
  limits.molarRatio,
  usual.molarRatio,
  "Moles of methanol per mole of triglyceride.",
);

export const temperature = optionalNumber(
  limits.temperature,
  "20 C",
  undefined,
  "Temperature of the oil when its volume was read, C.",
);
