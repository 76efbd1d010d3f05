import { mean } from "../exact/lists";
import {
  as,
  type Gram,
  type Millilitre,
  type MolePerLitre,
  type Percent,
} from "../quantity/quantity";
import { type Outcome, isProblem, problem } from "../problem/problem";
import type { FattyAcid } from "../reference/fatty-acids";
import { atMass } from "../replicates/at-mean-mass";
import { deviations, sumOfSquares } from "../replicates/deviations";
import { lessBlank, meanBlank } from "../titration/corrected-titre";
import { ffaPercent } from "../titration/free-fatty-acid";
import type { Replicate } from "../titration/mean-acid-value";

/** A titration as it stands in the notebook, with what is known of burette, balance and titrant. */
export interface Titration {
  readonly replicates: readonly Replicate[];
  /** mL; none means the solvent was neutralised. */
  readonly blanks: readonly Millilitre[];
  readonly molarity: MolePerLitre;
  readonly acid: FattyAcid;
  /** The smallest difference read on the burette. */
  readonly titreStep: Millilitre;
  readonly massStep: Gram;
  /** Was each sample weighed on its own, or one mass for all? */
  readonly hasOwnMasses: boolean;
  /** +- limits, percent; undefined for none. */
  readonly molarityPercent: Percent | undefined;
  readonly samplePercent: Percent | undefined;
}

/** The figures the uncertainty is worked out from, as doubles: roots and Student t follow. */
export interface BenchFigures {
  /** % FFA. */
  readonly ffa: number;
  /** Mean titre less blank, mL, as on the mean sample mass. */
  readonly netTitre: number;
  /** The same titre with its blank, mL. */
  readonly titre: number;
  readonly blank: number;
  /** mol/L. */
  readonly molarity: number;
  /** Mean sample mass, g. */
  readonly sampleMass: number;
  readonly titres: number;
  readonly blanks: number;
  /** Standard deviation of one titration, titre or blank, mL, pooled: one bench hand. */
  readonly scatter: number;
  /** Degrees of freedom of that scatter. */
  readonly freedom: number;
  readonly titreStep: number;
  readonly massStep: number;
  readonly weighings: number;
  readonly molarityPercent: number;
  readonly samplePercent: number;
}

const fewestTitres = 2;

/** Degrees of freedom of titres and blanks pooled. */
export const pooledFreedom = (titres: number, blanks: number): number =>
  titres - 1 + (blanks >= 1 ? blanks - 1 : 0);

/**
 * Sums, means and deviations are exact; only then do they become doubles, so that equal titres have a
 * scatter of exactly 0.
 * @returns a problem for a single titre, which has no scatter to judge by
 */
export function benchFigures(titration: Titration): Outcome<BenchFigures> {
  const { replicates, blanks } = titration;
  const titres = replicates.length;
  if (titres < fewestTitres) {
    return problem({
      code: "too-few",
      argument: "titres",
      called: "titre",
      given: titres,
      needed: fewestTitres,
    });
  }
  const blank = meanBlank(blanks);
  const meanMass = as("g", mean(replicates.map(([, sampleMass]) => sampleMass)));
  const net: Millilitre[] = [];
  for (const [titre, sampleMass] of replicates) {
    const above = lessBlank(titre, blank);
    if (isProblem(above)) return above;
    net.push(atMass(above, sampleMass, meanMass));
  }
  const netTitre = as("mL", mean(net));
  const ffa = ffaPercent(netTitre, titration.molarity, meanMass, titration.acid);
  if (isProblem(ffa)) return ffa;

  const freedom = pooledFreedom(titres, blanks.length);
  const squares =
    sumOfSquares(deviations(net)) + (blanks.length > 0 ? sumOfSquares(deviations(blanks)) : 0);
  return {
    ffa: ffa.toNumber(),
    netTitre: netTitre.toNumber(),
    titre: netTitre.plus(blank).toNumber(),
    blank: blank.toNumber(),
    molarity: titration.molarity.toNumber(),
    sampleMass: meanMass.toNumber(),
    titres,
    blanks: blanks.length,
    scatter: Math.sqrt(squares / freedom),
    freedom,
    titreStep: titration.titreStep.toNumber(),
    massStep: titration.massStep.toNumber(),
    weighings: titration.hasOwnMasses ? titres : 1,
    molarityPercent: titration.molarityPercent?.toNumber() ?? 0,
    samplePercent: titration.samplePercent?.toNumber() ?? 0,
  };
}
