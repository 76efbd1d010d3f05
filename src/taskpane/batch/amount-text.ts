/** Figures of a weigh-out as they are shown: four digits, never fewer before the point. */
import type { Batch } from "../../core/batch/batch";
import { placesFor } from "../../core/card/shown";
import { computed, type Exact, isExact } from "../../core/exact/exact";
import { inPounds } from "../../core/quantity/pounds";
import type { Gram } from "../../core/quantity/quantity";
import { type DecimalMark, withMark } from "../widgets/typed-number";

/** To so many decimals, without a mark between thousands: 1,287 g may be read as little more than one. */
export const amountTo = (value: Exact | number, places: number, mark: DecimalMark): string =>
  withMark((isExact(value) ? value : computed(value)).toFixed(places), mark);

/** @example amount(1286.7, ".") // "1287" */
export const amount = (value: Exact, mark: DecimalMark): string =>
  amountTo(value, placesFor(value), mark);

/** What a dose is made of; pure, so that the lye for the reaction is the same part of it as weighed. */
type Dose = Pick<Batch, "catalyst" | "pureForAcid" | "pureForReaction">;

/** Grams of a doubt: whole ones, of little the first digit. */
export const about = (grams: Exact, mark: DecimalMark): string =>
  withMark(grams.gte(2) ? grams.toFixed(0) : grams.toSignificantDigits(1).toFixed(), mark);

/**
 * No oil has less than no acid: the dose never falls below the lye for the reaction.
 * @example doseDoubt of 1286.7, 777 of it for the reaction, ± 16.7 // "1287 g ± 17 g from the titration."
 */
export function doseDoubt(dose: Dose, halfWidth: Exact, mark: DecimalMark): string {
  const { catalyst: value, pureForAcid, pureForReaction } = dose;
  const least = value.times(pureForReaction).div(pureForAcid.plus(pureForReaction));
  if (value.minus(halfWidth).gte(least))
    return `${amount(value, mark)} g ± ${about(halfWidth, mark)} g from the titration.`;
  const places = placesFor(value);
  const most = amountTo(value.plus(halfWidth), places, mark);
  return `From ${amountTo(least, places, mark)} to ${most} g, by the titration.`;
}

/** @example poundsText(1287 g) // "2 lb 13.4 oz" */
export function poundsText(mass: Gram, mark: DecimalMark): string {
  const { pounds, ounces } = inPounds(mass);
  const over = `${withMark(ounces.toFixed(1), mark)} oz`;
  return pounds.isZero() ? over : `${amountTo(pounds, 0, mark)} lb ${over}`;
}
