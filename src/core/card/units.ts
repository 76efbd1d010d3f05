/** The units a bench card speaks in: those of the person at the bench. */
import { type Exact, exact } from "../exact/exact";
import {
  kilogramsInPound,
  litresInImperialGallon,
  litresInUsGallon,
  type AmountUnit,
} from "../quantity/units";

export const cardUnits = ["metric", "us", "us, grams", "imperial", "imperial, grams"] as const;
export type CardUnits = (typeof cardUnits)[number];

/** What an amount of the card is counted in where it stands: litres, kilograms, grams. */
export type Counted = "L" | "kg" | "g";

/** One way an amount is shown. */
export interface Form {
  /** Whole pounds and the ounces over, to a tenth; or a figure with its unit. */
  readonly look: "figure" | "pounds and ounces";
  /** Behind the figure; no gallon is ever just a gallon. */
  readonly unit: string;
  /** The amount as it stands is divided by this: by what one of the unit holds of it. */
  readonly per: Exact;
}

const figure = (unit: string, per: Exact = exact(1)): Form => ({ look: "figure", unit, per });
const usGallons = figure("US gal", litresInUsGallon);
const imperialGallons = figure("imperial gal", litresInImperialGallon);
const ounces = (per: Exact): Form => ({ look: "pounds and ounces", unit: "", per });
export const ouncesInPound = exact(16);
const kilogramsInOunce = kilogramsInPound.div(ouncesInPound);
const gramsInOunce = kilogramsInOunce.times(1000);

/** @param isByPounds their scale says pounds; else it says grams, and the pounds stand behind them */
const inGallons = (gallons: Form, isByPounds: boolean): Readonly<Record<Counted, Form[]>> => {
  const mass = (each: Form, pounds: Form) => (isByPounds ? [pounds, each] : [each, pounds]);
  return {
    L: [gallons, figure("L")],
    kg: mass(figure("kg"), ounces(kilogramsInOunce)),
    g: mass(figure("g"), ounces(gramsInOunce)),
  };
};

const forms: Readonly<Record<CardUnits, Readonly<Record<Counted, readonly Form[]>>>> = {
  metric: { L: [figure("L")], kg: [figure("kg")], g: [figure("g")] },
  us: inGallons(usGallons, true),
  "us, grams": inGallons(usGallons, false),
  imperial: inGallons(imperialGallons, true),
  "imperial, grams": inGallons(imperialGallons, false),
};

/** The ways one is shown: first in the person's own unit, then in another. */
export const formsOf = (units: CardUnits, counted: Counted): readonly Form[] =>
  forms[units][counted];

/** What is read off a scale and typed as one figure: pounds, or ounces of what weighs less than one. */
export function readForm(form: Form, amount: Exact): Form {
  if (form.look === "figure") return form;
  const pound = form.per.times(ouncesInPound);
  return amount.lt(pound) ? figure("oz", form.per) : figure("lb", pound);
}

/** All units that an amount counted so may have been typed in, whatever the card speaks in now. */
export function typedForms(counted: Counted): readonly Form[] {
  const all = cardUnits
    .flatMap((units) => formsOf(units, counted))
    .flatMap((form) => {
      if (form.look === "figure") return [form];
      return [figure("oz", form.per), figure("lb", form.per.times(ouncesInPound))];
    });
  return [...new Map(all.map((form) => [form.unit, form])).values()];
}

/** Those of somebody who measures oil so. Pounds are weighed in both countries: US, as most of them are. */
export function cardUnitsFor(unit: AmountUnit | undefined): CardUnits {
  if (unit?.name === "us_gal" || unit?.name === "lb") return "us";
  return unit?.name === "uk_gal" ? "imperial" : "metric";
}
