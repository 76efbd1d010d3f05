/** Number fields that more than one task asks by, and how such a field is written down. */
import { limits, type Limits } from "../../core/reference/limits";
import type { NumberFieldFact } from "../widgets/judged";

/** @example numberField("Amount of oil", limits.amount, { hint: "A guess will do." }) */
export const numberField = (
  label: string,
  limit: Limits,
  more: Partial<NumberFieldFact> = {},
): NumberFieldFact => ({ label, unit: limit.unit, limit, ...more });

export const lyeAssay = numberField("Assay of the lye", limits.assay, {
  hint: "From its label: 90, not 0.90.",
});

export const oilTemperature = numberField("Oil temperature", limits.temperature, {
  unit: "°C",
  hint: "When it was measured. Left empty: 20 °C.",
  mayBeFahrenheit: true,
  isOptional: true,
});

/** Fields of the bench: what is typed there stays from one draft to the next. */
export const kept = <Field extends string>(
  fields: Readonly<Record<Field, NumberFieldFact>>,
): Readonly<Record<Field, NumberFieldFact>> =>
  Object.fromEntries(
    Object.entries<NumberFieldFact>(fields).map(([id, fact]) => [id, { ...fact, isKept: true }]),
  ) as Record<Field, NumberFieldFact>;
