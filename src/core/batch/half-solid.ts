import { shown } from "../exact/rounding";
import { type Celsius, quantity } from "../quantity/quantity";
import { type Oil, usedCookingOil } from "../reference/oils";

/** Fryer oil holds fats of many kinds: below this, part of them stands (common practice, no source). */
const halfSolidBelow = quantity("C", "15");

/**
 * A word of warning on cold used cooking oil, whose volume, and whose sample from the top, says little.
 * @param temperature C; left out: 20 C, and nothing to warn of
 * @param said as it was read off a thermometer; left out: in C
 */
export const halfSolidWords = (
  oil: Oil,
  temperature: Celsius | undefined,
  said?: string,
): string | undefined =>
  oil.name === usedCookingOil && temperature?.lt(halfSolidBelow)
    ? `Used cooking oil at ${said ?? `${shown(temperature)} °C`} may be half solid: warm it until it is clear and stir it, or weigh it (common practice).`
    : undefined;
