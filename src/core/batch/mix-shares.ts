/** The shares of a mix as they are typed: hundredths of a percent, and the last lot takes what is left. */
import { type Exact, exact, hundred, zero } from "../exact/exact";
import { type AcidValue, as, type Kilogram } from "../quantity/quantity";
import { blendedAcidValue } from "./blend";
import type { Taken } from "./mix-choice";

export interface MixShare {
  readonly lot: string;
  /** Of the mass. */
  readonly percent: Exact;
  readonly taken: Kilogram;
  /** What is left after it. */
  readonly after: Kilogram;
}

const places = 2;
const roundDown = 1;

interface Part {
  readonly from: Taken;
  readonly percent: Exact;
}

/** One lot takes all that the others, rounded down, leave; it comes last. */
function withRestTo(last: Taken, lots: readonly Taken[], amount: Kilogram): Part[] {
  const others = lots
    .filter((each) => each !== last)
    .map((from) => ({
      from,
      percent: from.taken.times(hundred).div(amount).toDecimalPlaces(places, roundDown),
    }))
    // what rounds to nothing cannot be typed
    .filter(({ percent }) => percent.gt(0));
  const rest = others.reduce((left, { percent }) => left.minus(percent), hundred);
  return [...others, { from: last, percent: rest }];
}

/**
 * The rest goes to a lot that has it, and that keeps the mix within its acid; where none does both, to the
 * one with the least acid, of which at most so many hundredths are wanted too much as there are lots.
 * @param most the acid value the mix may have; left out: any
 */
export function mixShares(
  lots: readonly Taken[],
  amount: Kilogram,
  most?: AcidValue,
): readonly MixShare[] {
  const mass = ({ percent }: Part): Kilogram => as("kg", percent.times(amount).div(hundred));
  const edge = most?.times(exact("1.000000001"));
  const fits = (parts: readonly Part[]): boolean =>
    parts.every((part) => mass(part).lte(part.from.left)) &&
    (edge === undefined ||
      blendedAcidValue(parts.map((part) => [part.from.acidValue, mass(part)] as const)).lte(edge));
  // the last one chosen is the one that is used up least often
  const ways = [...lots].reverse().map((last) => withRestTo(last, lots, amount));
  const [sweetest] = [...lots].sort((a, b) => a.acidValue.comparedTo(b.acidValue));
  const found = ways.find(fits) ?? (sweetest ? withRestTo(sweetest, lots, amount) : []);
  return found.map((part) => {
    const after = part.from.left.minus(mass(part));
    return {
      lot: part.from.lot,
      percent: part.percent,
      taken: mass(part),
      after: as("kg", after.lt(0) ? zero : after),
    };
  });
}
