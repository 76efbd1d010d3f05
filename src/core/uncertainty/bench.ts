import { type Exact, hundred } from "../exact/exact";
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
import { type UsualScatter, withUsual } from "../record/pooled-scatter";
import { pooledDeviation } from "../record/usual-scatter";
import { atMass } from "../replicates/at-mean-mass";
import { deviations, sumOfSquares } from "../replicates/deviations";
import { acidValue } from "../titration/acid-value";
import { lessBlank, meanBlank } from "../titration/corrected-titre";
import { ffaPercent } from "../titration/free-fatty-acid";
import type { Replicate } from "../titration/mean-acid-value";

/** Readings over weighed samples, with what is known of burette, balance and sample. */
export interface Measured {
  readonly replicates: readonly Replicate[];
  /** mL; none means the solvent was neutralised. */
  readonly blanks: readonly Millilitre[];
  /** The smallest difference read on the burette. */
  readonly titreStep: Millilitre;
  readonly massStep: Gram;
  /** Was each sample weighed on its own, or one mass for all? */
  readonly hasOwnMasses: boolean;
  /** +- limits of the sample, percent: taken by volume, or its purity; undefined for none. */
  readonly samplePercent: Percent | undefined;
  /** +- limits of the burette or syringe, percent of what it delivers. */
  readonly burettePercent?: Percent | undefined;
  /** How the same hand scattered before. */
  readonly usual?: UsualScatter | undefined;
}

/** The same with a titrant of known strength. */
export interface WithTitrant extends Measured {
  readonly molarity: MolePerLitre;
  /** +- limits of the titrant's strength, percent. */
  readonly molarityPercent: Percent | undefined;
}

/** A titration as it stands in the notebook. */
export interface Titration extends WithTitrant {
  readonly acid: FattyAcid;
}

/** The figures the uncertainty is worked out from, as doubles: roots and Student t follow. */
export interface MeasuredFigures {
  /** Mean titre less blank, mL, as on the mean sample mass. */
  readonly netTitre: number;
  /** The same titre with its blank, mL. */
  readonly titre: number;
  readonly blank: number;
  /** Mean sample mass, g. */
  readonly sampleMass: number;
  readonly titres: number;
  readonly blanks: number;
  /** Standard deviation of one titration, titre or blank, mL, pooled: one bench hand. */
  readonly scatter: number;
  /** Degrees of freedom of that scatter. */
  readonly freedom: number;
  /** How many of them are the record's; left out or 0: today counts alone. */
  readonly usualFreedom?: number;
  readonly titreStep: number;
  readonly massStep: number;
  readonly weighings: number;
  readonly samplePercent: number;
  readonly burettePercent?: number;
}

export interface BenchFigures extends MeasuredFigures {
  /** % FFA, or another result that rises with the titre: its uncertainty is in its unit. */
  readonly ffa: number;
  /** mol/L. */
  readonly molarity: number;
  readonly molarityPercent: number;
}

const fewestTitres = 2;

/** Degrees of freedom of titres and blanks pooled. */
export const pooledFreedom = (titres: number, blanks: number): number =>
  titres - 1 + Math.max(blanks - 1, 0);

/** The mean net titre and the mean sample, exactly. */
interface Exactly {
  readonly netTitre: Millilitre;
  readonly sampleMass: Gram;
}

/**
 * Sums, means and deviations are exact; only then do they become doubles, so that equal titres have a
 * scatter of exactly 0.
 * @returns a problem for a single titre, unless a usual scatter stands in for its own
 */
function measured(of: Measured): Outcome<MeasuredFigures & { readonly exactly: Exactly }> {
  const { replicates, blanks, usual } = of;
  const titres = replicates.length;
  if (titres < fewestTitres && (usual === undefined || titres === 0)) {
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
  const today = {
    squares:
      sumOfSquares(deviations(net)) + (blanks.length > 0 ? sumOfSquares(deviations(blanks)) : 0),
    freedom: pooledFreedom(titres, blanks.length),
  };
  const all = withUsual(today, usual);
  return {
    exactly: { netTitre, sampleMass: meanMass },
    netTitre: netTitre.toNumber(),
    titre: netTitre.plus(blank).toNumber(),
    blank: blank.toNumber(),
    sampleMass: meanMass.toNumber(),
    titres,
    blanks: blanks.length,
    scatter: pooledDeviation(all),
    freedom: all.freedom,
    usualFreedom: all.freedom - today.freedom,
    titreStep: of.titreStep.toNumber(),
    massStep: of.massStep.toNumber(),
    weighings: of.hasOwnMasses ? titres : 1,
    samplePercent: of.samplePercent?.toNumber() ?? 0,
    burettePercent: of.burettePercent?.toNumber() ?? 0,
  };
}

/** The figures behind a result that rises with the titre, in the unit of that result. */
function figuresOf<M extends Measured>(
  of: M,
  resultOf: (exactly: Exactly) => Outcome<Exact>,
  titrant: Pick<BenchFigures, "molarity" | "molarityPercent">,
): Outcome<BenchFigures> {
  const found = measured(of);
  if (isProblem(found)) return found;
  const { exactly, ...figures } = found;
  const result = resultOf(exactly);
  return isProblem(result) ? result : { ...figures, ...titrant, ffa: result.toNumber() };
}

const titrantOf = ({ molarity, molarityPercent }: WithTitrant) => ({
  molarity: molarity.toNumber(),
  molarityPercent: molarityPercent?.toNumber() ?? 0,
});

/** The figures behind a % FFA. */
export const benchFigures = (titration: Titration): Outcome<BenchFigures> =>
  figuresOf(
    titration,
    ({ netTitre, sampleMass }) =>
      ffaPercent(netTitre, titration.molarity, sampleMass, titration.acid),
    titrantOf(titration),
  );

/** The figures behind an acid value, mg KOH/g. */
export const acidValueFigures = (titration: WithTitrant): Outcome<BenchFigures> =>
  figuresOf(
    titration,
    ({ netTitre, sampleMass }) => acidValue(netTitre, titration.molarity, sampleMass),
    titrantOf(titration),
  );

/** The figures behind a strength set against weighed KHP: of 100, so that the answer is in percent. */
export const phthalateFigures = (against: Measured): Outcome<BenchFigures> =>
  figuresOf(against, () => hundred, { molarity: 1, molarityPercent: 0 });
