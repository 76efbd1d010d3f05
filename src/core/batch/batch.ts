/** The whole weigh-out of a batch, from the acid value. */
import { type Exact, exact, hundred, thousand, zero } from "../exact/exact";
import {
  type AcidValue,
  as,
  type Celsius,
  type Gram,
  type GramPerLitre,
  type Kilogram,
  type Litre,
  type MoleRatio,
  type Percent,
} from "../quantity/quantity";
import { type Outcome, isProblem } from "../problem/problem";
import type { Base } from "../reference/bases";
import { methanolDensity } from "../reference/liquids";
import { type Oil, usualTemperature } from "../reference/oils";
import { ffaAsOleic } from "../titration/free-fatty-acid";
import { catalyst, pureForAcid, pureForReaction } from "./catalyst";
import { densityAt } from "./density";
import { methanolMass } from "./methanol";
import { type Products, productsAtMost, waterFromAcid, waterFromBase } from "./products";
import { route } from "./route";
import { soap } from "./soap";

export interface BatchPlan {
  readonly oilMass: Kilogram;
  readonly acidValue: AcidValue;
  readonly base: Base;
  readonly assay: Percent;
  readonly baseCharge: Percent;
  readonly molarRatio: MoleRatio;
  readonly oil: Oil;
  readonly limitFfa: Percent;
}

export interface Batch extends Products {
  readonly ffa: Percent;
  readonly methanol: Kilogram;
  readonly methanolVolume: Litre;
  readonly methanolVolumePercent: Percent;
  /** Where the oil's volume is counted: 20 C, or where a fat is first liquid. */
  readonly oilVolumeAt: Celsius;
  readonly pureForAcid: Gram;
  readonly pureForReaction: Gram;
  readonly catalyst: Gram;
  readonly catalystPerLitre: GramPerLitre;
  /** Methanol that a methoxide solution brings with it. */
  readonly methanolBrought: Litre;
  readonly methanolToAdd: Litre;
  readonly soap: Kilogram;
  readonly waterFromAcid: Kilogram;
  readonly waterFromBase: Kilogram;
  /** Hydroxide that is not base is taken to be water. */
  readonly waterInLye: Kilogram;
  readonly route: string;
}

/** Below this assay, in percent, a methoxide is a solution and the rest of it is methanol. */
export const solutionBelow = exact(50);

const restOf = (weighed: Gram, assay: Percent): Kilogram =>
  as("kg", weighed.times(hundred.minus(assay)).div(hundred).div(thousand));

/** What is not base in a hydroxide; a methoxide's rest is methanol. */
export const waterInLye = (weighed: Gram, base: Base, assay: Percent): Kilogram =>
  base.isMethoxide ? as("kg", zero) : restOf(weighed, assay);

const isSolution = (plan: BatchPlan): boolean =>
  plan.base.isMethoxide && plan.assay.lt(solutionBelow);

export const volumeTemperature = (oil: Oil): Celsius =>
  oil.liquidFrom?.gt(usualTemperature) ? oil.liquidFrom : usualTemperature;

const litresOf = (methanol: Exact): Litre => as("L", methanol.div(methanolDensity));

/** Everything to weigh and to expect. Above the acid limit there is no answer but that. */
export function batch(plan: BatchPlan): Outcome<Batch> {
  const { oilMass, acidValue, base, assay, baseCharge, molarRatio, oil, limitFfa } = plan;
  const weighed = catalyst(oilMass, acidValue, base, assay, baseCharge, limitFfa);
  if (isProblem(weighed)) return weighed;
  const methanol = methanolMass(oilMass, molarRatio, acidValue, oil);
  if (isProblem(methanol)) return methanol;
  const products = productsAtMost(oilMass, acidValue, oil);
  if (isProblem(products)) return products;
  const oilVolumeAt = volumeTemperature(oil);
  const density = densityAt(oil, oilVolumeAt);
  if (isProblem(density)) return density;

  const oilVolume = oilMass.div(density);
  const brought = isSolution(plan) ? restOf(weighed, assay) : zero;
  const reaction = pureForReaction(oilMass, baseCharge);
  const toAdd = methanol.minus(brought);
  return {
    ...products,
    ffa: ffaAsOleic(acidValue),
    methanol,
    methanolVolume: litresOf(methanol),
    methanolVolumePercent: as("%", litresOf(methanol).times(hundred).div(oilVolume)),
    oilVolumeAt,
    pureForAcid: pureForAcid(oilMass, acidValue, base),
    pureForReaction: reaction,
    catalyst: weighed,
    catalystPerLitre: as("g/L", weighed.div(oilVolume)),
    methanolBrought: litresOf(brought),
    methanolToAdd: litresOf(toAdd.isNegative() ? zero : toAdd),
    soap: soap(oilMass, acidValue, base),
    waterFromAcid: waterFromAcid(oilMass, acidValue, base),
    waterFromBase: waterFromBase(reaction, base),
    waterInLye: waterInLye(weighed, base, assay),
    route: route(acidValue, undefined, limitFfa),
  };
}
