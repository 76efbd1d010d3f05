/** The number fields of a card: what was really weighed. */
import { limits, type Limits } from "../../core/reference/limits";
import { numberField } from "../fields/number-facts";
import type { NumberFieldFact } from "../widgets/judged";
import type { AmountShown } from "./card";

/** Under which it is kept: seven gallons are never read as seven litres once other units are picked. */
export const weighedKey = ({ id, scale }: AmountShown): string => `${id}, ${scale.form.unit}`;

export const weighedField = ({ what, scale }: AmountShown): NumberFieldFact =>
  numberField(`${what}: really`, limits.amount, { unit: scale.form.unit, isOptional: true });

/** Nobody washes or waits that often. */
const mostOften: Limits = { unit: "fraction", from: "0", fromIncluded: false, to: "10000" };

export const litresField = numberField("Fuel made", limits.amount, {
  unit: "L",
  isOptional: true,
});
export const minutesField = numberField("Minutes until the dark layer showed", mostOften, {
  unit: "min",
  isOptional: true,
});
export const washesField = numberField("Washes", mostOften, { unit: "times", isOptional: true });
