/** The arguments the functions about uncertainty share, and the figures they stand for. */
import { type Outcome, isProblem } from "../../core/problem/problem";
import type { Gram, Millilitre, MolePerLitre, Percent } from "../../core/quantity/quantity";
import type { FattyAcid } from "../../core/reference/fatty-acids";
import { limits } from "../../core/reference/limits";
import {
  acidValueFigures,
  benchFigures,
  type BenchFigures,
  type Measured,
  type WithTitrant,
} from "../../core/uncertainty/bench";
import { type List, number, optionalNumber } from "../arguments";
import { blanks } from "../blanks";
import { molarity, sampleMasses, titres } from "../common";
import { isOneCell, replicates, type Weighed } from "../pairing";
import { type GivenUsual, usualArguments, usualOf } from "../usual-arguments";
import { fattyAcid } from "../words";

const plusMinus = (says: string) => optionalNumber(limits.plusMinusPercent, "0", undefined, says);

const titreStep = number(
  limits.step,
  "burette step",
  "The smallest difference you read on the burette, mL.",
);

const massStep = number(
  limits.massStep,
  "balance step",
  "The smallest difference the balance shows, g.",
);

/** What is known beside the readings, and may be left out: then it is not counted. */
export const beside = {
  burettePercent: plusMinus("Limits of the burette or syringe, ± percent of what it delivers."),
  ...usualArguments,
};

export const steps = { titreStep, massStep };

const titrationOf = {
  titres,
  blanks: blanks("required"),
  molarity,
  sampleMasses,
  titreStep,
  massStep,
  molarityPercent: plusMinus("Limits of the titrant's strength, ± percent."),
  samplePercent: plusMinus("Limits of a sample taken by volume, ± percent."),
};

export const titrationArguments = { ...titrationOf, fattyAcid, ...beside };

/** The acid value names no acid. */
export const acidValueArguments = { ...titrationOf, ...beside };

export interface GivenReadings extends GivenUsual {
  readonly titres: List<"mL">;
  readonly blanks: readonly Millilitre[];
  readonly titreStep: Millilitre;
  readonly massStep: Gram;
  readonly burettePercent: Percent | undefined;
}

interface GivenTitration extends GivenReadings {
  readonly molarity: MolePerLitre;
  readonly sampleMasses: List<"g">;
  readonly molarityPercent: Percent | undefined;
  readonly samplePercent: Percent | undefined;
}

/** Readings with their masses, as the core takes them. */
export function measuredOf(
  given: GivenReadings,
  masses: List<"g">,
  samplePercent: Percent | undefined,
  weighed?: Weighed,
): Outcome<Measured> {
  const usual = usualOf(given);
  if (isProblem(usual)) return usual;
  const pairs = replicates(given.titres, masses, weighed);
  if (isProblem(pairs)) return pairs;
  return {
    replicates: pairs,
    blanks: given.blanks,
    titreStep: given.titreStep,
    massStep: given.massStep,
    hasOwnMasses: !isOneCell(masses),
    samplePercent,
    burettePercent: given.burettePercent,
    usual,
  };
}

function withTitrant(given: GivenTitration): Outcome<WithTitrant> {
  const found = measuredOf(given, given.sampleMasses, given.samplePercent);
  if (isProblem(found)) return found;
  return { ...found, molarity: given.molarity, molarityPercent: given.molarityPercent };
}

export function benchOf(
  given: GivenTitration & { readonly fattyAcid: FattyAcid },
): Outcome<BenchFigures> {
  const found = withTitrant(given);
  return isProblem(found) ? found : benchFigures({ ...found, acid: given.fattyAcid });
}

export function acidValueBenchOf(given: GivenTitration): Outcome<BenchFigures> {
  const found = withTitrant(given);
  return isProblem(found) ? found : acidValueFigures(found);
}
