/** What the steps and the choices are called. A gallon is never just a gallon. */
import type { Base } from "../../core/reference/bases";
import type { Compared } from "../../workbook/what-if/question";
import type { StepId, UnitId } from "./draft";

export const stepNames: Record<StepId, string> = {
  sizes: "Sizes",
  compare: "Compare",
  table: "Table",
  write: "Write",
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

export const comparedChoices: readonly (readonly [Compared, string])[] = [
  ["acid", "Acid values"],
  ["assay", "Assays"],
  ["charge", "Base charges"],
  ["base", "Bases"],
];

export const baseChoices: readonly (readonly [Base["name"], string])[] = [
  ["KOH", "KOH, potassium hydroxide"],
  ["NaOH", "NaOH, sodium hydroxide"],
  ["KOCH3", "KOCH3, potassium methoxide"],
  ["NaOCH3", "NaOCH3, sodium methoxide"],
];
