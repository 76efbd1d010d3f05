/** Units of an amount of oil, in the order they are offered. A gallon is never just a gallon. */
import { amountUnitNamed } from "../../core/quantity/units";

const unitIds = ["l", "kg", "lb", "us_gal", "uk_gal"] as const;
export type UnitId = (typeof unitIds)[number];

const of = <Part extends "shown" | "words">(part: Part): Record<UnitId, string> =>
  Object.fromEntries(unitIds.map((id) => [id, amountUnitNamed(id)?.[part] ?? id])) as Record<
    UnitId,
    string
  >;

/** After a figure. */
export const unitNames = of("shown");

/** In a list to choose from. */
export const unitWords = of("words");
