/** Units of an amount of oil, in the order they are offered. A gallon is never just a gallon. */
import { amountUnitNamed, offeredUnits } from "../../core/quantity/units";

export type UnitId = (typeof offeredUnits)[number];

const of = <Part extends "shown" | "words">(part: Part): Record<UnitId, string> =>
  Object.fromEntries(offeredUnits.map((id) => [id, amountUnitNamed(id)?.[part] ?? id])) as Record<
    UnitId,
    string
  >;

/** After a figure. */
export const unitNames = of("shown");

/** In a list to choose from. */
export const unitWords = of("words");
