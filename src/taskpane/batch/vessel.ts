/** Oil and methanol together, against what the vessel of My bench holds. */
import { oilMass } from "../../core/batch/oil-mass";
import { isProblem } from "../../core/problem/problem";
import { amountUnitNamed, offeredUnits } from "../../core/quantity/units";
import { type Exact, exact } from "../../core/exact/exact";
import type { BenchValues } from "../../workbook/tables/bench";
import { amount } from "./amount-text";
import type { Seen } from "./seen";

/** Oil that was weighed fills the vessel as well: by its density at its temperature. */
function litresOf({ figures, working }: Seen): Exact | undefined {
  const litre = amountUnitNamed("l");
  const mass = working.oilMass;
  if (!litre || !mass || isProblem(mass)) return undefined;
  const ofOne = oilMass(exact(1), litre, working.oil, figures.in("C", "temperature"));
  return isProblem(ofOne) ? undefined : mass.div(ofOne);
}

/** @returns a sentence where it does not fit; undefined where it does, or where nobody can tell */
export function vesselWords(seen: Seen, { vessel, unit }: BenchValues): string | undefined {
  const { batch: made } = seen.working;
  const held = offeredUnits.map(amountUnitNamed).find((each) => each?.shown === unit);
  const oil = litresOf(seen);
  if (vessel === undefined || held?.measures !== "volume") return undefined;
  if (!made || isProblem(made) || !oil) return undefined;
  const all = oil.plus(made.methanolToAdd).div(held.factor);
  if (all.lte(exact(vessel))) return undefined;
  return `Oil and methanol are ${amount(all, seen.mark)} ${held.shown}, and the vessel holds ${amount(exact(vessel), seen.mark)} ${held.shown}: make less.`;
}
