/** Figures of a weigh-out as they are shown: four digits, never fewer before the point. */
import { largest } from "../../core/exact/lists";
import type { Batch } from "../../core/batch/batch";
import { placesFor } from "../../core/card/shown";
import { computed, type Exact, isExact } from "../../core/exact/exact";
import { inPounds } from "../../core/quantity/pounds";
import type { Gram } from "../../core/quantity/quantity";
import { type DecimalMark, withMark } from "../widgets/typed-number";

/** Marks between thousands, as this person writes them: 1,287.5 or 1 287,5. */
function grouped(text: string, mark: DecimalMark): string {
  const [whole = "", rest] = text.split(".");
  const spaced = whole.replace(/\B(?=(\d{3})+$)/g, mark === "." ? "," : "\u202f");
  return rest === undefined ? spaced : `${spaced}${mark}${rest}`;
}

/** To so many decimals. */
export const amountTo = (value: Exact | number, places: number, mark: DecimalMark): string =>
  grouped((isExact(value) ? value : computed(value)).toFixed(places), mark);

/** @example amount(1286.7, ".") // "1,287" */
export const amount = (value: Exact, mark: DecimalMark): string =>
  amountTo(value, placesFor(value), mark);

/** What a dose is made of; pure, so that the lye for the reaction is the same part of it as weighed. */
type Dose = Pick<Batch, "catalyst" | "pureForAcid" | "pureForReaction">;

/**
 * No oil has less than no acid: the dose never falls below the lye for the reaction.
 * @example interval of 1286.7, 777 of it for the reaction, ± 16.7 // "1,270 and 1,303"
 */
export function interval(dose: Dose, halfWidth: Exact, mark: DecimalMark): string {
  const { catalyst: value, pureForAcid, pureForReaction } = dose;
  const places = placesFor(value);
  const least = value.times(pureForReaction).div(pureForAcid.plus(pureForReaction));
  const low = largest([value.minus(halfWidth), least]);
  return `${amountTo(low, places, mark)} and ${amountTo(value.plus(halfWidth), places, mark)}`;
}

/** @example poundsText(1287 g) // "2 lb 13.4 oz" */
export function poundsText(mass: Gram, mark: DecimalMark): string {
  const { pounds, ounces } = inPounds(mass);
  const over = `${withMark(ounces.toFixed(1), mark)} oz`;
  return pounds.isZero() ? over : `${amountTo(pounds, 0, mark)} lb ${over}`;
}
