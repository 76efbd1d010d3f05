/** What one division of the burette comes to: in % FFA, and in base for a batch. */
import { pureForAcid } from "../../../core/batch/catalyst";
import { densityAt } from "../../../core/batch/density";
import { mean } from "../../../core/exact/lists";
import { isProblem } from "../../../core/problem/problem";
import { as, type Gram, type Millilitre, type Percent } from "../../../core/quantity/quantity";
import { baseNamed } from "../../../core/reference/bases";
import { acidValue } from "../../../core/titration/acid-value";
import { ffaAsOleic } from "../../../core/titration/free-fatty-acid";
import type { Seen } from "../nudges/nudge";
import { oilOf, oneMass } from "../sample";

/** A batch of so much oil makes a figure that one can picture. */
export const picturedLitres = 100;

export interface OneDivision {
  readonly step: Millilitre;
  readonly ffa: Percent;
  /** Pure base for the acid in so much oil. */
  readonly base: Gram;
  readonly baseName: string;
}

/** @returns undefined while mass, strength or step are missing, or the lye's assay is not known */
export function oneDivision({ draft, figures, working }: Seen): OneDivision | undefined {
  const { strength, titres } = working;
  const step = figures.in("mL", "titreStep");
  const one = oneMass(draft, figures);
  const own = titres.flatMap(({ mass }) => mass ?? []);
  const mass = one ?? (own.length > 0 ? as("g", mean(own)) : undefined);
  const base = baseNamed(draft.picked.base);
  if (step === undefined || mass === undefined || isProblem(mass) || !base) return undefined;
  if (strength === undefined || strength.isAtMost) return undefined;
  const value = acidValue(step, strength.molarity, mass);
  const density = densityAt(oilOf(draft, figures));
  if (isProblem(value) || isProblem(density)) return undefined;
  const oil = as("kg", density.times(picturedLitres));
  return { step, ffa: ffaAsOleic(value), base: pureForAcid(oil, value, base), baseName: base.name };
}
