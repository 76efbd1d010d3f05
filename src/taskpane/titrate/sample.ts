/** How much oil is in a titration: weighed, or measured by volume. */
import { type Exact, exact, hundred } from "../../core/exact/exact";
import {
  as,
  type Gram,
  type Millilitre,
  type Percent,
  quantity,
} from "../../core/quantity/quantity";
import { isProblem, type Outcome } from "../../core/problem/problem";
import { type Oil, oilNamed, oilNotNamed, oilOfDensity } from "../../core/reference/oils";
import { sampleGrams } from "../../core/batch/oil-mass";
import { sampleToWeigh } from "../../core/titration/free-fatty-acid";
import { largestSample } from "../../core/uncertainty/advice";
import type { Draft } from "./draft";
import { asInCell } from "../fields/number-figures";
import { digits } from "../widgets/shown-number";
import type { Figures } from "./figures";
import type { Strength } from "./strength";

/** The oil as named, or by its own density where one is typed. */
export function oilOf(draft: Draft, figures: Figures): Oil {
  const density = figures.in("kg/L", "density");
  if (density !== undefined) return oilOfDensity(density);
  return oilNamed(draft.picked.oil) ?? oilNotNamed;
}

/**
 * Grams in the volume typed.
 * @returns undefined while a figure is missing or wrong; a problem for a fat that is solid there
 */
export function massByVolume(draft: Draft, figures: Figures): Outcome<Gram> | undefined {
  const volume = figures.in("mL", "volume");
  const isWrong = (["density", "temperature"] as const).some(
    (field) => figures.judged(field).kind === "wrong",
  );
  if (volume === undefined || isWrong) return undefined;
  const mass = sampleGrams(volume, oilOf(draft, figures), figures.in("C", "temperature"));
  return isProblem(mass) ? mass : asInCell("g", mass);
}

/** Each sample has its own mass: only where they are weighed. */
export const hasOwnMasses = (draft: Draft): boolean =>
  draft.picked.sample === "weighed" && draft.picked.masses === "own";

/** The one mass for all; undefined while it is missing, or when each has its own. */
export function oneMass(draft: Draft, figures: Figures): Outcome<Gram> | undefined {
  if (draft.picked.sample === "by volume") return massByVolume(draft, figures);
  return hasOwnMasses(draft) ? undefined : figures.in("g", "mass");
}

const mostDisagreement = exact(5);

/** How far a weighed mass is off the mass of its volume, percent; undefined when they agree. */
export function disagreement(weighed: Gram, byVolume: Gram): Percent | undefined {
  const percent = weighed.minus(byVolume).abs().times(hundred).div(byVolume);
  return percent.gt(mostDisagreement) ? as("%", percent) : undefined;
}

/** Twenty steps of titre, so that reading to one step is doubt of a few percent (common practice). */
export const stepsWanted = 20;

/** Below this a titrant is all but water, mol/L (common practice, no source). */
const weakestUsual = "0.01";

export interface Suggested {
  /** g, rounded up to two digits; never more than a method takes. */
  readonly mass: Gram;
  /** mol/L where that mass is too little for the titrant at hand: so strong at most, or "none". */
  readonly weaker?: Exact | "none";
}

/**
 * The smallest sample whose titre is twenty steps long. Where no method takes so much, the largest that
 * one takes, and how weak the titrant must be for it.
 * @param expected % FFA as oleic
 */
export function suggestedSample(
  expected: Percent,
  strength: Strength,
  titreStep: Millilitre,
): Suggested {
  const target = as("mL", titreStep.times(stepsWanted));
  const wanted = sampleToWeigh(expected, strength.molarity, target);
  const mass = as("g", twoDigits(wanted, roundUp));
  if (mass.lte(largestSample)) return { mass };
  const molarity = twoDigits(strength.molarity.times(largestSample).div(wanted), roundDown);
  return {
    mass: as("g", exact(largestSample)),
    weaker: molarity.lt(weakestUsual) ? "none" : molarity,
  };
}

/** "2.9 g or more"; "56 g, and use a titrant of 0.037 mol/L or weaker"; of hardly any acid "56 g at most". */
export function suggestedWords({ mass, weaker }: Suggested, asVolume = ""): string {
  const grams = `${digits(mass, 2)} g${asVolume}`;
  if (weaker === undefined) return `${grams} or more`;
  return weaker === "none"
    ? `${grams}, the most that is usual; there is hardly any acid to titrate`
    : `${grams}, and use a titrant of ${weaker.toString()} mol/L or weaker`;
}

const roundUp = 0;
const roundDown = 1;
const twoDigits = (value: Exact, way: typeof roundUp | typeof roundDown): Exact =>
  value.toSignificantDigits(2, way);

/** What is suggested for while nobody has guessed: a usual fryer oil (common practice, no source). */
export const usualAcid = quantity("%", 2);

/**
 * A sample taken by volume was never weighed. The row has one column for doubt about its mass, so it
 * gets the balance step that is worth the same: m p/100 sqrt 2, since step^2/6 = (m p/100)^2/3.
 */
const equalBalanceStep = (mass: Gram, percent: Percent): Gram =>
  asInCell("g", mass.times(percent).div(hundred).times(exact(2).sqrt()));

/** The step the mass is known to; undefined while it is missing or wrong. */
export function massStepOf(draft: Draft, figures: Figures): Gram | undefined {
  if (draft.picked.sample === "weighed") return figures.in("g", "massStep");
  const mass = massByVolume(draft, figures);
  const percent = figures.in("%", "samplePercent");
  if (mass === undefined || isProblem(mass) || percent === undefined) return undefined;
  return equalBalanceStep(mass, percent);
}
