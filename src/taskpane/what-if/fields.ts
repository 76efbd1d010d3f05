/** The number fields and the lists of a what-if table: label, unit and limits of each, said once. */
import type { Base } from "../../core/reference/bases";
import { limits } from "../../core/reference/limits";
import { oilNotNamed } from "../../core/reference/oils";
import { lyeAssay, numberField, oilTemperature } from "../fields/number-facts";
import type { NumberFieldFact } from "../widgets/judged";

const charge = numberField("Base charge, pure", limits.baseCharge, {
  hint: "Percent of the oil’s mass.",
});
const acid = numberField("Acid value", limits.acidValue);

const ownFields = {
  from: numberField("From", limits.amount, { unit: "" }),
  to: numberField("To", limits.amount, { unit: "" }),
  step: numberField("Step", limits.amount, { unit: "" }),
  temperature: oilTemperature,
  density: numberField("Density at 20 °C", limits.oilDensity, {
    hint: `Left empty: ${oilNotNamed.density.toString()}.`,
    isOptional: true,
  }),
  acid,
  ffa: numberField("Acid, as % FFA", limits.ffaPercent, { hint: "As oleic acid." }),
  assay: lyeAssay,
  charge,
  limit: numberField("Allowed acid", limits.ffaLimit, {
    unit: "% FFA",
    hint: "3: read in a review. 5: commonly cited. Above it there is no dose.",
  }),
};

/** Each base that is compared has its own. */
const ofBases = {
  assayKOH: lyeAssay,
  assayNaOH: lyeAssay,
  assayKOCH3: lyeAssay,
  assayNaOCH3: lyeAssay,
  chargeKOH: charge,
  chargeNaOH: charge,
  chargeKOCH3: charge,
  chargeNaOCH3: charge,
} satisfies Record<`${"assay" | "charge"}${Base["name"]}`, NumberFieldFact>;

export const numberFields = { ...ownFields, ...ofBases } satisfies Record<string, NumberFieldFact>;

export type NumberFieldId = keyof typeof numberFields;

const several = "A space between figures.";

/** Figures with spaces between them. */
export const lists = {
  sizes: numberField("Batch sizes", limits.amount, {
    unit: "",
    hint: `${several} As in: 50 100 200`,
  }),
  acid: numberField("Acid values to compare", limits.acidValue, {
    hint: `${several} As in: 1.5 3 6`,
  }),
  ffa: numberField("% FFA to compare", limits.ffaPercent, {
    hint: `${several} As oleic acid. As in: 1 2 3`,
  }),
  assay: numberField("Assays to compare", limits.assay, { hint: `${several} As in: 85 90` }),
  charge: numberField("Base charges to compare, pure", limits.baseCharge, {
    hint: `${several} Percent of the oil’s mass.`,
  }),
} satisfies Record<string, NumberFieldFact>;

export type ListId = keyof typeof lists;

/** A table larger than this is read by nobody. */
export const mostSizes = 200;
export const mostColumns = 50;
