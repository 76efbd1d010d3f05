/** The number fields of a batch: label, unit and limits of each, said once. */
import { limits, type Limits } from "../../core/reference/limits";
import type { NumberFieldFact } from "../widgets/judged";

/** A charge as weighed may be more than as pure. */
const chargeAsPercent: Limits = { ...limits.baseCharge, to: "10" };
const formerAmount: Limits = { unit: "g", from: "0", fromIncluded: false, to: "1000000" };
const share: Limits = { unit: "%", from: "0", fromIncluded: false, to: "99.9" };

const field = (
  label: string,
  limit: Limits,
  more: Partial<NumberFieldFact> = {},
): NumberFieldFact => ({ label, unit: limit.unit, limit, ...more });

export const numberFields = {
  amount: field("Amount of oil", limits.amount, { unit: "" }),
  temperature: field("Oil measured at", limits.temperature, {
    unit: "°C",
    hint: "Left empty: 20 °C.",
    isOptional: true,
  }),
  water: field("Water in the oil", limits.waterPercent, {
    hint: "600 ppm is 0.06. Left empty: not measured.",
    isOptional: true,
  }),
  target: field("Target", limits.ffaPercent, { unit: "% FFA", hint: "As oleic acid." }),
  assay: field("Assay of the lye", limits.assay, { hint: "From its label: 90, not 0.90." }),
  chargePercent: field("Base charge", chargeAsPercent, {
    unit: "% of the oil",
    hint: "Percent of the oil’s mass.",
  }),
  chargeGrams: field("Base charge", limits.chargeGramsPerLitre, {
    hint: "Grams for one litre of oil at 20 °C.",
  }),
  ratio: field("Methanol", limits.molarRatio, {
    unit: "to 1",
    hint: "Moles to one of triglyceride. 6: Freedman 1984 (commonly cited).",
  }),
  volumePercent: field("Methanol", limits.volumePercent, {
    unit: "% by volume",
    hint: "Litres for 100 litres of oil at 20 °C.",
  }),
  limit: field("Allowed acid", limits.ffaLimit, {
    unit: "% FFA",
    hint: "Above it no dose is shown.",
  }),
  acidAssay: field("Sulfuric acid’s assay", limits.assay, {
    hint: "Left empty: 96.",
    isOptional: true,
  }),
  former: field("What you used to weigh", formerAmount, {
    hint: "Grams of this lye for this batch.",
    isOptional: true,
  }),
  share: field("Share", share, { unit: "% by mass" }),
} as const satisfies Record<string, NumberFieldFact>;

export type NumberFieldId = Exclude<keyof typeof numberFields, "share">;
export const numberFieldIds = Object.keys(numberFields).filter(
  (id) => id !== "share",
) as NumberFieldId[];
