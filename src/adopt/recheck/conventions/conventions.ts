/**
 * Ways of keeping a logbook that are all right: whose assay comes off in an acid value, which density
 * stands behind a litre. Each is another reading of what the row gives, so that all that follows, what
 * should be there and what a mistake did included, is in the maker's own convention. What grams of lye
 * mean is no convention to learn: it is said, or both answers are tried (basis-answers.ts).
 */
import { densityAt } from "../../../core/batch/density";
import { isProblem } from "../../../core/problem/problem";
import { quantity } from "../../../core/quantity/quantity";
import { type Oil, oilOfDensity } from "../../../core/reference/oils";
import type { Readings } from "../reading/readings";

export interface Convention {
  /**
   * The titrant's grams are of the flake that the batch is made with, and its assay comes off in the acid
   * value and % FFA; many leave it on there, since the dose has none of it.
   */
  readonly acidAsWeighed: boolean;
  /** The lye for the acid is by a published coefficient, not a mole for a mole of oleic acid. */
  readonly byCoefficient: boolean;
  /** kg/L behind the sample's volume; undefined: the row's own. */
  readonly sampleDensity: number | undefined;
  /** kg/L behind the batch's volume; "hot": the oil's at the row's temperature. */
  readonly oilDensity: number | "hot" | undefined;
  /** The dose is read off the burette, g for a litre: no density comes into its acid part. */
  readonly doseByTitre: boolean;
}

export const plainConvention: Convention = {
  acidAsWeighed: false,
  byCoefficient: false,
  sampleDensity: undefined,
  oilDensity: undefined,
  doseByTitre: false,
};

/** Densities in use for oil of no stated density (common practice, no source); 0.911 is 7.6 lb a US gallon. */
export const usualDensities: readonly number[] = [
  0.915, 0.92, 0.91, 0.9, 0.911, 0.918, 0.925, 0.905, 0.895, 0.93, 0.89, 0.88,
];

const known = new Map<number, Oil>();
function oilOf(density: number): Oil {
  const before = known.get(density);
  if (before) return before;
  const made = oilOfDensity(quantity("kg/L", density));
  known.set(density, made);
  return made;
}

function hot({ oil, temperature }: Readings): Oil {
  if (temperature === undefined) return oil;
  const warm = densityAt(oil, quantity("C", temperature));
  return isProblem(warm) ? oil : oilOf(warm.toNumber());
}

/** A sample or a batch in litres, or a charge or a dose for a litre of what is weighed. */
export const hangsOnDensity = (r: Readings): boolean =>
  r.volume !== undefined ||
  r.amount?.unit.measures === "volume" ||
  r.charge?.per === "g/L" ||
  r.isDosedByLitre === true;

const isFree = ({ isDensityStated }: Readings): boolean => isDensityStated !== true;

/** May a row's grams of titrant be those of the batch's own flake? */
export const canBeSameFlake = ({
  strength,
  molarity,
  assay,
  titrantBase,
  base,
}: Readings): boolean =>
  strength !== undefined &&
  molarity === undefined &&
  assay !== undefined &&
  (base === undefined || titrantBase?.name === base.name);

/** The row as it reads in a convention. */
export const inConvention = (r: Readings, c: Convention): Readings =>
  reading(r, c, r.strengthBasis === "as weighed", c.doseByTitre);

/** The same for what the titration alone gives. */
export const titrationInConvention = (r: Readings, c: Convention): Readings =>
  reading(r, c, r.strengthBasis !== "pure" && c.acidAsWeighed, false);

function reading(
  r: Readings,
  c: Convention,
  strengthAsWeighed: boolean,
  isByTitre: boolean,
): Readings {
  const share = r.assay === undefined ? 1 : r.assay / 100;
  const titrantShare = r.strengthBasis === "as weighed" ? r.strengthAssay / 100 : share;
  const { strength, charge } = r;
  const sampleOil = c.sampleDensity !== undefined && isFree(r) ? oilOf(c.sampleDensity) : r.oil;
  const oil =
    c.oilDensity === "hot"
      ? hot(r)
      : c.oilDensity !== undefined && isFree(r)
        ? oilOf(c.oilDensity)
        : r.oil;
  return {
    ...r,
    oil,
    sampleOil: isByTitre ? oil : sampleOil,
    ...(strengthAsWeighed && strength !== undefined && canBeSameFlake(r)
      ? { strength: strength * titrantShare, strengthGiven: strength }
      : {}),
    ...(c.byCoefficient ? { byCoefficient: true as const } : {}),
    ...(charge?.basis === "as weighed"
      ? { charge: { ...charge, value: charge.value * share, basis: "pure" as const } }
      : {}),
  };
}

/** Densities that lie apart by no more than what rounding and other constants may do. */
const apart: readonly number[] = [0.91, 0.92, 0.9];

/** The conventions that a row which does not fit the logbook's own may be in, the likeliest first. */
export function conventionsFor(
  r: Readings,
  { usual, others }: { readonly usual: Convention; readonly others: readonly Convention[] },
): Convention[] {
  const all = [usual, ...others];
  const isVolume = r.amount?.unit.measures === "volume";
  const free = isFree(r) && hangsOnDensity(r) ? apart : [];
  const hotly = isVolume && r.temperature !== undefined ? (["hot"] as const) : [];
  return [
    ...others,
    ...all.flatMap((each) => [
      ...hotly.map((oilDensity) => ({ ...each, oilDensity })),
      ...free.map((density) => ({ ...each, sampleDensity: density, oilDensity: density })),
      ...free.map((oilDensity) => ({ ...each, oilDensity })),
      ...free.flatMap((sampleDensity) => [
        { ...each, sampleDensity },
        { ...each, sampleDensity, doseByTitre: true },
      ]),
    ]),
  ];
}
