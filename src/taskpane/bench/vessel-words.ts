/** Oil and methanol together, against what the vessel of My bench holds. */
import { type Exact, exact } from "../../core/exact/exact";
import { amountUnitNamed, offeredUnits } from "../../core/quantity/units";
import type { BenchValues } from "../../workbook/tables/bench";
import { amount } from "../batch/amount-text";
import type { DecimalMark } from "../widgets/typed-number";

/**
 * @param litres oil and methanol together
 * @returns a sentence where it does not fit; undefined where it does, or where nobody can tell
 */
export function vesselWords(
  litres: Exact,
  { vessel, unit }: BenchValues,
  mark: DecimalMark,
): string | undefined {
  const held = offeredUnits.map(amountUnitNamed).find((each) => each?.shown === unit);
  if (vessel === undefined || held?.measures !== "volume") return undefined;
  const all = litres.div(held.factor);
  if (all.lte(exact(vessel))) return undefined;
  return `Oil and methanol are ${amount(all, mark)} ${held.shown}, and the vessel holds ${amount(exact(vessel), mark)} ${held.shown}: make less.`;
}
