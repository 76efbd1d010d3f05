/** The acid part of a dose in grams of the very lye that is in the burette: no assay, no molar mass. */
import { isProblem } from "../../core/problem/problem";
import { as, type GramPerLitre } from "../../core/quantity/quantity";
import { densityAt } from "../../core/batch/density";
import { perLitre } from "../../core/titration/titrant";
import type { Seen } from "./nudges/nudge";
import { oilOf, oneMass } from "./sample";

/**
 * @returns undefined unless the titrant is the batch's own lye of unknown assay, and one sample served
 * all; g of that lye per litre of oil at the sample's temperature
 */
export function lyePerLitre({ draft, figures, working }: Seen): GramPerLitre | undefined {
  const { acid, strength } = working;
  if (acid === undefined || isProblem(acid) || !strength?.isAtMost) return undefined;
  if (strength.gramsPerLitre === undefined) return undefined;
  if (draft.picked.sample === "by volume") {
    const volume = figures.in("mL", "volume");
    return volume && perLitre(acid.correctedTitre, strength.gramsPerLitre, volume);
  }
  const mass = oneMass(draft, figures);
  const density = densityAt(oilOf(draft, figures), figures.in("C", "temperature"));
  if (mass === undefined || isProblem(mass) || isProblem(density)) return undefined;
  return perLitre(acid.correctedTitre, strength.gramsPerLitre, as("mL", mass.div(density)));
}
