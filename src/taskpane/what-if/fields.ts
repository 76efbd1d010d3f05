/** The number fields and the lists of a what-if table: label, unit and limits of each, said once. */
import type { Base } from "../../core/reference/bases";
import { limits, type Limits } from "../../core/reference/limits";
import type { NumberFieldFact } from "../widgets/judged";
import type { ListId } from "./draft";

const field = (
  label: string,
  limit: Limits,
  more: Partial<NumberFieldFact> = {},
): NumberFieldFact => ({ label, unit: limit.unit, limit, ...more });

const assay = field("Assay of the lye", limits.assay, { hint: "From its label: 90, not 0.90." });
const charge = field("Base charge, pure", limits.baseCharge, {
  hint: "Percent of the oil’s mass.",
});
const acid = field("Acid value", limits.acidValue);

const ownFields = {
  from: field("From", limits.amount, { unit: "" }),
  to: field("To", limits.amount, { unit: "" }),
  step: field("Step", limits.amount, { unit: "" }),
  temperature: field("Oil measured at", limits.temperature, {
    unit: "°C",
    hint: "Left empty: 20 °C.",
    isOptional: true,
  }),
  density: field("Density at 20 °C", limits.oilDensity, {
    hint: "Left empty: 0.915.",
    isOptional: true,
  }),
  acid,
  assay,
  charge,
  limit: field("Allowed acid", limits.ffaLimit, {
    unit: "% FFA",
    hint: "3: read in a review. 5: commonly cited. Above it there is no dose.",
  }),
};

/** Each base that is compared has its own. */
const ofBases = {
  assayKOH: assay,
  assayNaOH: assay,
  assayKOCH3: assay,
  assayNaOCH3: assay,
  chargeKOH: charge,
  chargeNaOH: charge,
  chargeKOCH3: charge,
  chargeNaOCH3: charge,
} satisfies Record<`${"assay" | "charge"}${Base["name"]}`, NumberFieldFact>;

export const numberFields = { ...ownFields, ...ofBases } satisfies Record<string, NumberFieldFact>;

export type NumberFieldId = keyof typeof numberFields;
export const numberFieldIds = Object.keys(numberFields) as NumberFieldId[];

const several = "A space between two.";

export const lists: Record<ListId, NumberFieldFact> = {
  sizes: field("Batch sizes", limits.amount, { unit: "", hint: `${several} As in: 50 100 200` }),
  acid: field("Acid values to compare", limits.acidValue, { hint: `${several} As in: 1.5 3 6` }),
  assay: field("Assays to compare", limits.assay, { hint: `${several} As in: 85 90` }),
  charge: field("Base charges to compare, pure", limits.baseCharge, {
    hint: `${several} Percent of the oil’s mass.`,
  }),
};
