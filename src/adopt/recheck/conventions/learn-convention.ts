/**
 * Which convention a logbook is kept in: the one in which its figures come nearest to what they should
 * be. Mistakes do not pull at it, since a figure that is far off counts no more than one that is off.
 */
import {
  canBeSameFlake,
  type Convention,
  hangsOnDensity,
  plainConvention,
  usualDensities,
} from "./conventions";
import type { Readings } from "../reading/readings";

export interface Told {
  /** How far off each held figure is, as a share of what its digits and rounding allow; 0 is exact. */
  readonly misfits: (row: Readings, convention: Convention) => readonly number[];
  /** The one known mistake that gives all that is wrong in a row; "" for nothing wrong. */
  readonly mistakeIn: (row: Readings, convention: Convention) => string | undefined;
}

export interface LearnedConvention {
  readonly usual: Convention;
  /** Conventions of a good part of the rows besides. */
  readonly others: readonly Convention[];
}

const most = 3;
const total = (misfits: readonly number[]): number =>
  misfits.reduce((sum, each) => sum + Math.min(most, each), 0);

/** What each step away from the plain convention has to be worth: less than one figure come right. */
const stepCosts = 3;
const densityCosts = 3;
const stepsOf = ({
  doseByTitre,
  acidAsWeighed,
  byCoefficient,
  sampleDensity,
  oilDensity,
}: Convention): number =>
  stepCosts * (Number(acidAsWeighed) + Number(byCoefficient) + Number(doseByTitre)) +
  densityCosts * (Number(oilDensity !== undefined) + Number(sampleDensity !== oilDensity));

/** Densities that a maker may have measured: the third digit beside one in use. */
const besideDensity = (density: number): number[] =>
  [-4, -3, -2, -1, 1, 2, 3, 4].map(
    (thousandths) => Math.round(density * 1000 + thousandths) / 1000,
  );

/** No density and no coefficient. */
const withoutShares = ({ acidAsWeighed }: Convention): Convention => ({
  ...plainConvention,
  acidAsWeighed,
});

/**
 * A density or a coefficient that rows are only thought to share because they share a mistake is none:
 * where one known mistake explains as many rows, the row's own figures count.
 */
function besidesMistake(
  usual: Convention,
  rows: readonly Readings[],
  { misfits, mistakeIn }: Told,
): Convention {
  const plain = withoutShares(usual);
  if (stepsOf(usual) <= stepsOf(plain)) return usual;
  const fits = (convention: Convention) => (row: Readings) =>
    misfits(row, convention).every((each) => each <= 1);
  const odd = rows.filter((row) => !fits(plain)(row));
  const counts = new Map<string, number>();
  for (const row of odd) {
    const key = mistakeIn(row, plain) ?? "";
    if (key !== "") counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  const shared = Math.max(0, ...counts.values());
  const asMany = rows.length - odd.length + shared >= rows.filter(fits(usual)).length;
  return shared > 1 && asMany ? plain : usual;
}

/** A convention of a tenth of the rows may be the mistakes of a tenth of the rows. */
const goodPart = 0.3;

export function learnConvention(rows: readonly Readings[], told: Told): LearnedConvention {
  const { misfits } = told;
  /** Not worked out further than it takes to see that it is no less than another. */
  const cost = (convention: Convention, limit = Infinity): number => {
    let sum = stepsOf(convention);
    for (const row of rows) {
      if (sum >= limit) return sum;
      sum += total(misfits(row, convention));
    }
    return sum;
  };
  const cheapest = (candidates: readonly Convention[], from: Convention): Convention => {
    let best = from;
    let least = cost(from) - 0.01;
    for (const each of candidates) {
      const own = cost(each, least);
      if (own < least) [best, least] = [each, own];
    }
    return best;
  };
  const either = [false, true];
  const knowsAssay = rows.some(({ assay }) => assay !== undefined && assay < 99.5);
  const mayComeOff = knowsAssay && rows.some(canBeSameFlake);
  const weighings = (mayComeOff ? either : [false]).flatMap((acidAsWeighed) =>
    either.map((byCoefficient) => ({ ...plainConvention, acidAsWeighed, byCoefficient })),
  );
  const isFree = rows.some((row) => row.isDensityStated !== true && hangsOnDensity(row));
  const isHot = rows.some(({ temperature }) => temperature !== undefined);
  const densities: readonly (number | undefined)[] = isFree
    ? [undefined, ...usualDensities]
    : [undefined];
  const both = weighings.flatMap((weighing) =>
    densities.map((density) => ({ ...weighing, sampleDensity: density, oilDensity: density })),
  );
  let usual = cheapest(both, plainConvention);
  const hot = isHot ? (["hot"] as const) : [];
  const isSampledByVolume = rows.some(({ volume }) => volume !== undefined);
  const routes = isSampledByVolume ? either : [false];
  // One density after the other: a sample and a batch are seldom taken with different ones.
  for (let times = 0; times < 2 && (isFree || isHot); times += 1) {
    const from = usual;
    const oils = routes.flatMap((doseByTitre) =>
      [...densities, ...hot].map((oilDensity) => ({ ...from, oilDensity, doseByTitre })),
    );
    const byOil = cheapest(oils, from);
    const samples = routes.flatMap((doseByTitre) =>
      densities.map((sampleDensity) => ({ ...byOil, sampleDensity, doseByTitre })),
    );
    usual = isSampledByVolume ? cheapest(samples, byOil) : byOil;
  }
  if (isFree) {
    // the nearest of those in use, though the heat of the day may be nearer: the maker's own lies beside it
    const from = usual;
    const [first = from, ...rest] = usualDensities.map((oilDensity) => ({ ...from, oilDensity }));
    const { oilDensity } = cheapest(rest, first);
    const own = typeof oilDensity === "number" ? besideDensity(oilDensity) : [];
    usual = cheapest(
      own.map((density) => ({ ...from, oilDensity: density })),
      from,
    );
  }
  const isRight = (row: Readings, convention: Convention): boolean =>
    misfits(row, convention).every((each) => each <= 1.5);
  usual = besidesMistake(usual, rows, told);
  const left = rows.filter((row) => !isRight(row, usual));
  const others = weighings
    .map((each) => ({ ...each, sampleDensity: usual.sampleDensity, oilDensity: usual.oilDensity }))
    .filter(
      (each) =>
        left.filter((row) => isRight(row, each)).length >= Math.max(2, rows.length * goodPart),
    );
  return { usual, others };
}
