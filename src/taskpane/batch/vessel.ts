/** Oil and methanol together, against what the vessel of My bench holds. */
import { isProblem } from "../../core/problem/problem";
import { amountUnitNamed, offeredUnits } from "../../core/quantity/units";
import { exact } from "../../core/exact/exact";
import type { BenchValues } from "../../workbook/tables/bench";
import { amount } from "./amount-text";
import type { Seen } from "./seen";

/** @returns a sentence where it does not fit; undefined where it does, or where nobody can tell */
export function vesselWords(seen: Seen, { vessel, unit }: BenchValues): string | undefined {
  const { batch: made, oilMass } = seen.working;
  const measured = amountUnitNamed(seen.draft.picked.unit);
  const held = offeredUnits.map(amountUnitNamed).find((each) => each?.shown === unit);
  const oil = seen.figures.value("amount");
  if (vessel === undefined || held?.measures !== "volume" || measured?.measures !== "volume")
    return undefined;
  if (!made || isProblem(made) || !oilMass || isProblem(oilMass) || !oil) return undefined;
  const all = oil.times(measured.factor).plus(made.methanolToAdd).div(held.factor);
  if (all.lte(exact(vessel))) return undefined;
  return `Oil and methanol are ${amount(all, seen.mark)} ${held.shown}, and the vessel holds ${amount(exact(vessel), seen.mark)} ${held.shown}: make less.`;
}
