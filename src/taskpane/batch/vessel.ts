/** What goes into the vessel of a batch in hand, against what it holds. */
import { oilLitres } from "../../core/batch/oil-mass";
import { isProblem } from "../../core/problem/problem";
import type { BenchValues } from "../../workbook/tables/bench";
import { vesselWords } from "../bench/vessel-words";
import type { Seen } from "./seen";

/** @returns a sentence where it does not fit; undefined where it does, or where nobody can tell */
export function tooMuchFor(
  { figures, working, mark }: Seen,
  bench: BenchValues,
): string | undefined {
  const { batch: made, oilMass: mass, oil } = working;
  if (!made || isProblem(made) || !mass || isProblem(mass)) return undefined;
  const litres = oilLitres(mass, oil, figures.in("C", "temperature"));
  return isProblem(litres) ? undefined : vesselWords(litres.plus(made.methanolToAdd), bench, mark);
}
