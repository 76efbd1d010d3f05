/** The number fields of a batch: label, unit and limits of each, said once. */
import { limits, type Limits } from "../../core/reference/limits";
import { kept, lyeAssay, numberField, oilTemperature } from "../fields/number-facts";
import { waterFields } from "../water/fields";
import type { NumberFieldFact } from "../widgets/judged";

/** A charge as weighed may be more than as pure. */
const chargeAsPercent: Limits = { ...limits.baseCharge, to: "10" };
const formerAmount: Limits = { unit: "g", from: "0", fromIncluded: false, to: "1000000" };
const shareOfMass: Limits = { unit: "%", from: "0", fromIncluded: false, to: "99.99" };

/** A lot's share of the mass: one field a lot, so none of the fields below. */
export const shareField = numberField("Share", shareOfMass, { unit: "% by mass" });

/** The vessel and the lye: the same for the next batch. */
const ofTheVessel = kept({
  amount: numberField("Amount of oil", limits.amount, { unit: "" }),
  assay: lyeAssay,
  chargePercent: numberField("Base charge", chargeAsPercent, {
    unit: "% of the oil",
    hint: "Percent of the oil’s mass.",
  }),
  chargeGrams: numberField("Base charge", limits.chargeGramsPerLitre, {
    hint: "Grams for one litre of oil at 20 °C.",
  }),
  ratio: numberField("Methanol: moles to 1 of oil", limits.molarRatio, {
    unit: "",
    hint: "6 is usual: Freedman 1984 (commonly cited).",
  }),
  volumePercent: numberField("Methanol", limits.volumePercent, {
    unit: "% by volume",
    hint: "Litres for 100 litres of oil at 20 °C.",
  }),
  trialLye: numberField("Lye in the trial", limits.titrantMass, { isOptional: true }),
  trialMethanol: numberField("Methanol in the trial", limits.reading, { isOptional: true }),
  trialRise: numberField("It warmed by", limits.temperatureRise, { unit: "°C", isOptional: true }),
  acidAssay: numberField("Sulfuric acid’s assay", limits.assay, {
    hint: "Left empty: 96.",
    isOptional: true,
  }),
});

export const numberFields = {
  ...ofTheVessel,
  temperature: oilTemperature,
  water: numberField("Water in the oil", limits.waterPercent, {
    hint: "Type percent: 600 ppm is 0.06 %. Left empty: not measured.",
    isOptional: true,
  }),
  ...waterFields,
  target: numberField("Target", limits.ffaPercent, { unit: "% FFA", hint: "As oleic acid." }),
  /** Of a mix chosen from what is in store; its unit is what was picked. */
  mostAcid: numberField("Acid at most", limits.ffaPercent, { unit: "% FFA", isOptional: true }),
  limit: numberField("Allowed acid", limits.ffaLimit, {
    unit: "% FFA",
    hint: "Above it no dose is shown.",
  }),
  former: numberField("Your old amount", formerAmount, {
    hint: "Grams of this lye for this batch.",
    isOptional: true,
  }),
} as const satisfies Record<string, NumberFieldFact>;

export type NumberFieldId = keyof typeof numberFields;
