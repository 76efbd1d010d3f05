/** The number fields of a titration: label, unit and limits of each, said once. */
import { limits, type Limits } from "../../core/reference/limits";
import { kept, lyeAssay, numberField, oilTemperature } from "../fields/number-facts";
import type { NumberFieldFact } from "../widgets/judged";

/** A scale may begin at 0.00; no other figure on the bench is 0. */
const scaleReading: Limits = { unit: "mL", from: "0", fromIncluded: true, to: "1000" };
const percentByVolume: Limits = { unit: "%", from: "0", fromIncluded: false, to: "20" };

const required = (
  label: string,
  limit: Limits,
  hint?: string,
  unit: string = limit.unit,
): NumberFieldFact => numberField(label, limit, { unit, ...(hint === undefined ? {} : { hint }) });

const optional = (
  label: string,
  limit: Limits,
  hint?: string,
  unit: string = limit.unit,
): NumberFieldFact => ({ ...required(label, limit, hint, unit), isOptional: true });

/** Titrant, burette and balance: the same at the next titration on this bench. */
const ofTheBench = kept({
  molarity: required("Strength", limits.molarity),
  normality: required("Strength", limits.molarity, undefined, "N"),
  gramsPerLitre: required("Strength", limits.titrantStrength, "Lye as weighed, in one litre."),
  percent: required("Strength", percentByVolume, "Grams of lye in 100 mL.", "% w/v"),
  lyeMass: required("Lye weighed", limits.titrantMass),
  lyeVolume: required("Made up to", limits.volume),
  assay: lyeAssay,
  phthalateMass: required("KHP weighed", limits.phthalateMass, "Potassium hydrogen phthalate."),
  phthalateTitre: required("Corrected titre", limits.reading),
  phthalatePurity: optional("Purity of the KHP", limits.purity, "Left empty: 100."),
  certified: required("Strength", limits.molarity, "As the certificate says."),
  kept: required("Strength", limits.molarity),
  strengthPercent: optional("Accurate to ±", limits.plusMinusPercent, undefined, "%"),
  titreStep: required(
    "Smallest burette mark",
    limits.step,
    "Half of it if you read between two marks.",
  ),
  burettePercent: optional(
    "Burette accurate to ±",
    limits.plusMinusPercent,
    "Marked ± 0.05 mL on 10 mL: 0.5. Left empty: not counted.",
    "%",
  ),
  massStep: required("Smallest balance step", limits.massStep),
  samplePercent: optional(
    "Accurate to ±",
    limits.plusMinusPercent,
    "A syringe half full or more: 5. 1 mL out of 10 mL: 16.",
    "%",
  ),
});

export const numberFields = {
  ...ofTheBench,
  mass: required("Oil weighed", limits.sampleMass),
  volume: required("Oil measured", limits.sampleVolume),
  density: optional("Density at 20 °C", limits.oilDensity),
  temperature: oilTemperature,
  expected: optional("Acid you expect", limits.ffaPercent, "A guess will do.", "% FFA"),
  used: required("Volume used", limits.reading),
  start: required("Start", scaleReading),
  end: required("End", scaleReading),
  // a blank that was typed and not added does not become a titre
  blankUsed: required("Volume used", limits.reading),
  blankStart: required("Start", scaleReading),
  blankEnd: required("End", scaleReading),
  ownMass: required("Oil in this one", limits.sampleMass),
} as const satisfies Record<string, NumberFieldFact>;

export type NumberFieldId = keyof typeof numberFields;
