/** What one division of the burette comes to: in % FFA, and in base for a batch. */
import { pureForAcid } from "../../../core/batch/catalyst";
import { oilMass } from "../../../core/batch/oil-mass";
import { exact } from "../../../core/exact/exact";
import { mean } from "../../../core/exact/lists";
import { isProblem } from "../../../core/problem/problem";
import { as, type Gram, type Millilitre, type Percent } from "../../../core/quantity/quantity";
import { type AmountUnit, amountUnitNamed, offeredUnits } from "../../../core/quantity/units";
import { baseNamed } from "../../../core/reference/bases";
import { acidValue } from "../../../core/titration/acid-value";
import { ffaAsOleic } from "../../../core/titration/free-fatty-acid";
import type { Seen } from "../nudges/nudge";
import { oilOf, oneMass } from "../sample";

/** A batch of so much oil makes a figure that one can picture, each in what oil is measured in. */
const pictured = { l: 100, kg: 100, us_gal: 25, uk_gal: 20, lb: 200 } as const;

const picturedIn = (shownUnit: string | undefined) => {
  const name = offeredUnits.find((each) => amountUnitNamed(each)?.shown === shownUnit) ?? "l";
  return { unit: amountUnitNamed(name) as AmountUnit, amount: pictured[name] };
};

export interface OneDivision {
  readonly step: Millilitre;
  readonly ffa: Percent;
  /** Pure base for the acid in so much oil. */
  readonly base: Gram;
  readonly baseName: string;
  /** "100 L". */
  readonly oil: string;
}

/**
 * @param measuredIn what oil is measured in at this bench: "US gal"; litres where nobody said
 * @returns undefined while mass, strength or step are missing, or the lye's assay is not known
 */
export function oneDivision(
  { draft, figures, working }: Seen,
  measuredIn?: string,
): OneDivision | undefined {
  const { strength, titres } = working;
  const step = figures.in("mL", "titreStep");
  const one = oneMass(draft, figures);
  const own = titres.flatMap(({ mass }) => mass ?? []);
  const mass = one ?? (own.length > 0 ? as("g", mean(own)) : undefined);
  const base = baseNamed(draft.picked.base);
  if (step === undefined || mass === undefined || isProblem(mass) || !base) return undefined;
  if (strength === undefined || strength.isAtMost) return undefined;
  const value = acidValue(step, strength.molarity, mass);
  const { unit, amount } = picturedIn(measuredIn);
  const oil = oilMass(exact(amount), unit, oilOf(draft, figures));
  if (isProblem(value) || isProblem(oil)) return undefined;
  return {
    step,
    ffa: ffaAsOleic(value),
    base: pureForAcid(oil, value, base),
    baseName: base.name,
    oil: `${String(amount)} ${unit.shown}`,
  };
}
