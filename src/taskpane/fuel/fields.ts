/** The number fields of a fuel: label, unit and limits of each, said once. */
import { limits, type Limits } from "../../core/reference/limits";
import { washesLabel } from "../card/fields";
import { kept, numberField } from "../fields/number-facts";
import { waterFields } from "../water/fields";
import type { NumberFieldFact } from "../widgets/judged";

const washes: Limits = { unit: "fraction", from: "0", fromIncluded: false, to: "20" };
const optional = { isOptional: true } as const;

/** Burettes, balance and titrants: the same for the next fuel. */
const ofTheBench = kept({
  acidMolarity: numberField("Titrant strength", limits.molarity, { hint: "0.1 is usual." }),
  titreStep: numberField("Burette step", limits.step, {
    ...optional,
    hint: "Smallest difference you read.",
  }),
  massStep: numberField("Balance step", limits.massStep, {
    ...optional,
    hint: "Smallest difference it shows.",
  }),
  acidPercent: numberField("Titrant accurate to ±", limits.plusMinusPercent, {
    ...optional,
    hint: "How far off its strength may be.",
  }),
  soapMolarity: numberField("Hydrochloric acid", limits.molarity, {
    hint: "0.01 is usual.",
  }),
  soapPercent: numberField("Titrant accurate to ±", limits.plusMinusPercent, optional),
});

export const numberFields = {
  ...ofTheBench,
  washes: numberField(washesLabel, washes, { ...optional, unit: "" }),
  litres: numberField("How much fuel", limits.amount, { ...optional, unit: "L" }),
  acidMass: numberField("Fuel in each flask", limits.sampleMass, { hint: "20 g (EN 14104)." }),
  acidTitre1: numberField("Titre 1", limits.reading),
  acidTitre2: numberField("Titre 2", limits.reading, optional),
  acidTitre3: numberField("Titre 3", limits.reading, optional),
  acidBlank: numberField("Blank", limits.reading, {
    ...optional,
    hint: "Left empty: the solvent was neutralised beforehand.",
  }),
  soapMass: numberField("Fuel in the flask", limits.sampleMass, {
    hint: "100 g washed; 6 to 10 g unwashed.",
  }),
  freeBaseTitre: numberField("To the first end point", limits.reading, {
    ...optional,
    hint: "Left empty: it was colourless from the start.",
  }),
  soapTitre: numberField("From there to the second", limits.reading),
  soapBlank: numberField("Blank to the same yellow", limits.reading, {
    ...optional,
    hint: "The solvent alone. Left empty: it took nothing.",
  }),
  water: numberField("Water in the fuel", limits.waterPercent, {
    ...optional,
    hint: "Type percent: 500 ppm is 0.05 %. Left empty: not measured.",
  }),
  ...waterFields,
} as const satisfies Record<string, NumberFieldFact>;

export type NumberFieldId = keyof typeof numberFields;
