/** The number fields of a card: what was really weighed. */
import { wentLimits } from "../../core/batch/went";
import { type CardUnits, type Form, formsOf } from "../../core/card/units";
import { shownIn } from "../../core/card/shown";
import type { Exact } from "../../core/exact/exact";
import { limits, type Limits } from "../../core/reference/limits";
import { numberField } from "../fields/number-facts";
import type { NumberFieldFact } from "../widgets/judged";
import { countedValue } from "../../workbook/card/amounts";
import type { AmountShown } from "./card";
import type { Box } from "./box";
import type { TypedBox } from "./typed";

/** Under which it is kept: seven gallons are never read as seven litres once other units are picked. */
const keyIn =
  (id: string) =>
  ({ unit }: Form): string =>
    `${id}, ${unit}`;
export const weighedKey = ({ id, scale }: AmountShown): string => keyIn(id)(scale.form);

export const weighedBox = (amount: AmountShown): Box => ({
  counted: amount.scale.part.counted,
  form: amount.scale.form,
  key: keyIn(amount.id),
  fact: weighedField(amount),
});

/** Two pounds and eight ounces in large are typed as one figure: which, stands above the box. */
export function weighedField({
  what,
  figure,
  scale: { form, part },
}: AmountShown): NumberFieldFact {
  const worked = shownIn(form, countedValue(part));
  return numberField(`${what}: what you put in`, limits.amount, {
    unit: form.unit,
    isOptional: true,
    ...(worked === figure
      ? {}
      : { hint: `Worked out: ${worked}. As the scale says it: 3 lb 4 oz, 3 lb, 4.5 oz.` }),
  });
}

/**
 * A figure that is half as much again as what was worked out, or two thirds of it or less: in another unit,
 * most likely. Nobody is stopped.
 */
export function farFrom({ scale: { part } }: AmountShown, typed: TypedBox): string | undefined {
  const worked = countedValue(part);
  if (worked.lte(0) || typed.value === undefined) return undefined;
  const share = typed.value.div(worked);
  if (share.lt("1.5") && share.times("1.5").gt(1)) return undefined;
  return `Planned ${shownIn(typed.form, worked)}, you typed ${typed.asTyped}: check the unit.`;
}

/** Nobody washes or waits that often. */
const mostOften: Limits = { unit: "fraction", from: "0", fromIncluded: false, to: "10000" };

/** Fuel is measured in what oil is measured in. */
const madeForm = (units: CardUnits): Form => {
  const [form] = formsOf(units, "L");
  if (form === undefined) throw new Error("no way to show litres");
  return form;
};

/** Under which it is kept: gallons are never read as litres once other units are picked. */
const madeIn = ({ unit }: Form): string => (unit === "L" ? "litres" : `litres, ${unit}`);
export const madeKey = (units: CardUnits): string => madeIn(madeForm(units));

const madeField = (units: CardUnits): NumberFieldFact =>
  numberField("Fuel made", limits.amount, { unit: madeForm(units).unit, isOptional: true });

/** The same as the name of a unit, for the fuel's own task. */
export const madeUnit = (units: CardUnits): string => {
  if (units === "metric") return "l";
  return units.startsWith("us") ? "us_gal" : "uk_gal";
};

export const madeBox = (units: CardUnits): Box => ({
  counted: "L",
  form: madeForm(units),
  key: madeIn,
  fact: madeField(units),
});

/** @param oil litres that went in, or were planned; undefined where nobody can tell */
export function muchMade(
  oil: Exact | undefined,
  made: Exact,
  units: CardUnits,
  inFact: "went in" | "was planned",
): string | undefined {
  if (oil === undefined || oil.lte(0) || made.lte(oil.times(wentLimits.made))) return undefined;
  const form = madeForm(units);
  return `${shownIn(form, oil)} of oil ${inFact}, you typed ${shownIn(form, made)} of fuel: more than it can give. Check the unit; measure it settled and dried.`;
}

export const minutesField = numberField("Minutes until the dark layer showed", mostOften, {
  unit: "min",
  isOptional: true,
});
/** The same for the fuel. */
export const washesLabel = "Number of washes";
export const washesField = numberField(washesLabel, mostOften, {
  unit: "",
  isOptional: true,
  isWhole: true,
});
