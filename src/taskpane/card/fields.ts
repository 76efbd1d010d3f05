/** The number fields of a card: what was really weighed. */
import { type CardUnits, type Form, formsOf } from "../../core/card/units";
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

/** Fuel is measured in what oil is measured in. */
export const madeForm = (units: CardUnits): Form => {
  const [form] = formsOf(units, "L");
  if (form === undefined) throw new Error("no way to show litres");
  return form;
};

/** Under which it is kept: gallons are never read as litres once other units are picked. */
export const madeKey = (units: CardUnits): string =>
  units === "metric" ? "litres" : `litres, ${madeForm(units).unit}`;

export const madeField = (units: CardUnits): NumberFieldFact =>
  numberField("Fuel made", limits.amount, { unit: madeForm(units).unit, isOptional: true });
export const minutesField = numberField("Minutes until the dark layer showed", mostOften, {
  unit: "min",
  isOptional: true,
});
export const washesField = numberField("Washes", mostOften, { unit: "times", isOptional: true });
