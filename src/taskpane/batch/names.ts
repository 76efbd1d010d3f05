/** What the steps and the choices are called. A gallon is never just a gallon. */
import type { StepId, UnitId } from "./draft";

export const stepNames: Record<StepId, string> = {
  oil: "Oil",
  lye: "Lye",
  methanol: "Methanol",
  "weigh-out": "Weigh-out",
  record: "Record",
};

/** After a figure. */
export const unitNames: Record<UnitId, string> = {
  l: "L",
  kg: "kg",
  lb: "lb",
  us_gal: "US gal",
  uk_gal: "imperial gal",
};

export const unitChoices: readonly (readonly [UnitId, string])[] = [
  ["l", "Litres"],
  ["kg", "Kilograms"],
  ["lb", "Pounds"],
  ["us_gal", "US gallons (3.785 L)"],
  ["uk_gal", "Imperial gallons (4.546 L)"],
];
