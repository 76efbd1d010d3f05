/** The arguments FFAUNCERTAINTY and BUDGET share, and the figures they stand for. */
import { type Outcome, isProblem } from "../../core/problem/problem";
import type { Gram, Millilitre, MolePerLitre, Percent } from "../../core/quantity/quantity";
import type { FattyAcid } from "../../core/reference/fatty-acids";
import { limits } from "../../core/reference/limits";
import { benchFigures, type BenchFigures } from "../../core/uncertainty/bench";
import { type List, number, optionalNumber } from "../arguments";
import { blanks } from "../blanks";
import { molarity, sampleMasses, titres } from "../common";
import { isOneCell, replicates } from "../pairing";
import { fattyAcid } from "../words";

const plusMinus = (says: string) => optionalNumber(limits.plusMinusPercent, "0", undefined, says);

export const titrationArguments = {
  titres,
  blanks: blanks("required"),
  molarity,
  sampleMasses,
  titreStep: number(
    limits.step,
    "burette step",
    "The smallest difference you read on the burette, mL.",
  ),
  massStep: number(
    limits.massStep,
    "balance step",
    "The smallest difference the balance shows, g.",
  ),
  molarityPercent: plusMinus("Limits of the titrant's strength, ± percent."),
  samplePercent: plusMinus("Limits of a sample taken by volume, ± percent."),
  fattyAcid,
};

export interface Given {
  readonly titres: List<"mL">;
  readonly blanks: readonly Millilitre[];
  readonly molarity: MolePerLitre;
  readonly sampleMasses: List<"g">;
  readonly titreStep: Millilitre;
  readonly massStep: Gram;
  readonly molarityPercent: Percent | undefined;
  readonly samplePercent: Percent | undefined;
  readonly fattyAcid: FattyAcid;
}

export function benchOf(given: Given): Outcome<BenchFigures> {
  const pairs = replicates(given.titres, given.sampleMasses);
  if (isProblem(pairs)) return pairs;
  return benchFigures({
    replicates: pairs,
    blanks: given.blanks,
    molarity: given.molarity,
    acid: given.fattyAcid,
    titreStep: given.titreStep,
    massStep: given.massStep,
    hasOwnMasses: !isOneCell(given.sampleMasses),
    molarityPercent: given.molarityPercent,
    samplePercent: given.samplePercent,
  });
}
