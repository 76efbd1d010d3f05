/** Glycerol by periodate and thiosulfate, and what it says of the reaction. */
import { atMost } from "../exact/compare";
import { exact, hundred } from "../exact/exact";
import { largest, mean, smallest } from "../exact/lists";
import {
  as,
  type Gram,
  type Millilitre,
  type MolePerLitre,
  type Percent,
} from "../quantity/quantity";
import { type Outcome, problem } from "../problem/problem";
import { glycerol } from "../reference/compounds";
import { limits } from "../reference/limits";
import type { Oil } from "../reference/oils";

/** One glycerol takes two periodate; each periodate left sets free iodine for two thiosulfate less. */
export const thiosulfatePerGlycerol = 4;

/** Milligrams for each millimole of thiosulfate, and of a hundred. */
const factor = glycerol.div(thiosulfatePerGlycerol * 10);

const whole = exact(limits.glycerolPercent.to);

/**
 * Glycerol, % of the mass: (B - S) c 92.094 / 40 / m (AOCS Ca 14-56, formula commonly cited).
 * @param sampleMass g of fuel that is in the portion titrated
 * @example blank 25.00, titre 23.70, 0.0100 mol/L, 0.125 g: 0.2394 %
 */
export function glycerolPercent(
  titres: readonly Millilitre[],
  blanks: readonly Millilitre[],
  molarity: MolePerLitre,
  sampleMass: Gram,
): Outcome<Percent> {
  const [titre, blank] = [largest(titres), smallest(blanks)];
  if (titre.gte(blank)) return problem({ code: "titre-not-below-blank", titre, blank });
  const given = mean(blanks).minus(mean(titres)).times(molarity).times(factor).div(sampleMass);
  return atMost(given, whole)
    ? as("%", given)
    : problem({ code: "too-much", called: "glycerol", given, unit: "%", limit: whole });
}

/** Glycerol that the triglyceride holds, % of its mass: 10.40 of triolein. */
const glycerolBound = (oil: Oil): Percent => as("%", glycerol.times(hundred).div(oil.triglyceride));

/**
 * Share of the triglyceride that reacted, as its glycerol tells: 100 (1 - (total - free) / bound).
 * @example conversion(0.240, 0.020) // 97.885 %
 */
export function conversion(total: Percent, free: Percent, oil: Oil): Outcome<Percent> {
  if (free.gt(total)) return problem({ code: "free-above-total", free, total });
  const bound = glycerolBound(oil);
  const left = total.minus(free);
  if (!atMost(left, bound)) return problem({ code: "more-than-bound", left, bound });
  const share = left.gt(bound) ? bound : left;
  return as("%", hundred.minus(share.times(hundred).div(bound)));
}
