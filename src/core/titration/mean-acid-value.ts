import { mean } from "../exact/lists";
import {
  type AcidValue,
  as,
  type Gram,
  type Millilitre,
  type MolePerLitre,
} from "../quantity/quantity";
import { type Outcome, isProblem } from "../problem/problem";
import { acidValueDefinition } from "../reference/compounds";
import { acidValue, plausibleAcidValue } from "./acid-value";
import { lessBlank, meanBlank } from "./corrected-titre";
import type { Slot } from "./pairs";

/** A titre and the mass of the sample it was run on. */
export type Replicate = readonly [titre: Millilitre, sampleMass: Gram];

/**
 * Each replicate's own acid value, in the order given; gaps stay gaps.
 * @param replicates titre (mL) and its own sample mass (g)
 * @param blanks mL; none means neutralised
 */
export function eachAcidValue(
  replicates: readonly Slot<Replicate>[],
  blanks: readonly Millilitre[],
  molarity: MolePerLitre,
): Outcome<Slot<AcidValue>[]> {
  const blank = meanBlank(blanks);
  const values: Slot<AcidValue>[] = [];
  for (const replicate of replicates) {
    if (replicate === null) {
      values.push(null);
      continue;
    }
    const [titre, sampleMass] = replicate;
    const net = lessBlank(titre, blank);
    if (isProblem(net)) return net;
    const value = acidValue(net, molarity, sampleMass);
    if (isProblem(value)) return value;
    values.push(value);
  }
  return values;
}

/** Millilitres of titrant per gram of oil, for each replicate: what scatter is judged on. */
function netPerGram(
  replicates: readonly Replicate[],
  blanks: readonly Millilitre[],
): Outcome<Millilitre[]> {
  const blank = meanBlank(blanks);
  const ratios: Millilitre[] = [];
  for (const [titre, sampleMass] of replicates) {
    const net = lessBlank(titre, blank);
    if (isProblem(net)) return net;
    ratios.push(as("mL", net.div(sampleMass)));
  }
  return ratios;
}

/**
 * Mean of each replicate's own acid value.
 *   AV = 56.1 c mean((Vi - B) / mi)
 * @param replicates one or more
 * @returns mg KOH/g, up to 400
 * @example meanAcidValue([[2.10, 5.02], [2.31, 5.51]], [0.10], 0.1) // 2.24258
 */
export function meanAcidValue(
  replicates: readonly Replicate[],
  blanks: readonly Millilitre[],
  molarity: MolePerLitre,
): Outcome<AcidValue> {
  const ratios = netPerGram(replicates, blanks);
  if (isProblem(ratios)) return ratios;
  return plausibleAcidValue(
    as("mg KOH/g", acidValueDefinition.times(molarity).times(mean(ratios))),
  );
}
