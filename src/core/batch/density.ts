import { as, type Celsius, type KilogramPerLitre } from "../quantity/quantity";
import { type Outcome, problem } from "../problem/problem";
import { densitySlopePerCelsius, type Oil, usualTemperature } from "../reference/oils";

/**
 * Density of an oil at a temperature: it falls 0.00066 kg/L for each degree.
 * A fat that is solid there has no useful density: its volume is refused.
 * @param temperature C; left out: 20 C
 * @example densityAt(canola, 25) // 0.9121 kg/L
 */
export function densityAt(
  oil: Oil,
  temperature: Celsius = usualTemperature,
): Outcome<KilogramPerLitre> {
  const lowest = oil.liquidFrom;
  if (lowest !== undefined && temperature.lt(lowest)) {
    return problem({ code: "solid-fat", oil: oil.name, lowest, temperature });
  }
  const warmer = temperature.minus(oil.densityAt);
  return as("kg/L", oil.density.minus(densitySlopePerCelsius.times(warmer)));
}
