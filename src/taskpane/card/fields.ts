/** The number fields of a card: what was really weighed. */
import { limits } from "../../core/reference/limits";
import { numberField } from "../fields/number-facts";
import type { NumberFieldFact } from "../widgets/judged";
import type { AmountShown } from "./card";

export const weighedField = ({ what, scale }: AmountShown): NumberFieldFact =>
  numberField(`${what}: really`, limits.amount, { unit: scale.form.unit, isOptional: true });
