/** An amount as the card shows it. The printed card's formulas come to the same (workbook/card). */
import { type Exact, one, ten } from "../exact/exact";
import { type Form, ouncesInPound } from "./units";

const mostPlaces = 6;
const digitsWanted = 4;

/** How many decimals show a figure to four digits, never fewer before the point. */
export function placesFor(value: Exact): number {
  let places = digitsWanted - 1;
  for (let edge = ten; value.gte(edge) && places > 0; edge = edge.times(ten)) places -= 1;
  for (let edge = one; value.lt(edge) && value.gt(0) && places < mostPlaces; edge = edge.div(ten)) {
    places += 1;
  }
  return places;
}

/**
 * Without marks between thousands, with a point.
 * @example shownIn({ look: "figure", unit: "US gal", per: 3.785411784 }, 52 L) // "13.74 US gal"
 * @example shownIn({ look: "pounds and ounces", unit: "", per: 28.349523125 }, 1287 g) // "2 lb 13.4 oz"
 */
export function shownIn({ look, unit, per }: Form, amount: Exact): string {
  const value = amount.div(per);
  if (look === "figure") return `${value.toFixed(placesFor(value))} ${unit}`;
  const ounces = value.toDecimalPlaces(1);
  const pounds = ounces.div(ouncesInPound).floor();
  return `${pounds.toFixed()} lb ${ounces.minus(pounds.times(ouncesInPound)).toFixed(1)} oz`;
}
