/** Which lots make up the batch, in which shares, and what acid the mix has. */
import { blend, blendedHalfWidth } from "../../core/batch/blend";
import { type Exact, exact, hundred, zero } from "../../core/exact/exact";
import { isProblem, type Outcome, type Problem } from "../../core/problem/problem";
import { say } from "../../core/problem/wording";
import { type AcidValue, as, type Percent, quantity } from "../../core/quantity/quantity";
import { acidValueFromFfa, ffaAsOleic } from "../../core/titration/free-fatty-acid";
import type { RecordedLot } from "../../workbook/planning/read-lots";
import { lotMark } from "../lots/lot-mark";
import { fixed, partsShown } from "../widgets/shown-number";
import type { Draft } from "./draft";
import type { Figures } from "./figures";

export interface MixedLot {
  readonly recorded: RecordedLot;
  readonly acidValue: AcidValue;
  /** Of the mass, %. */
  readonly percent: Exact;
}

export interface Mix {
  readonly lots: readonly MixedLot[];
  readonly acidValue: AcidValue;
  readonly ffa: Percent;
  /** Of the 95 % interval, % FFA; undefined when a lot's is not known. */
  readonly halfWidth: number | undefined;
}

/** Each lot's share as it is shown: they add up to a hundred. */
export const sharesShown = ({ lots }: Mix): readonly string[] =>
  partsShown(
    lots.map(({ percent }) => percent),
    tenths,
  );

/** The recorded lots that were chosen, in the order chosen; undefined where one is gone from the table. */
export const chosenLots = (
  draft: Draft,
  recorded: readonly RecordedLot[],
): readonly (RecordedLot | undefined)[] =>
  draft.lots.map(({ lot }) =>
    recorded.find((each) => lotMark(each).toLowerCase() === lot.toLowerCase()),
  );

/** Shares are rounded to a tenth of a percent, towards the lot with less acid. */
const tenths = 1;
const roundUp = 0;
const roundDown = 1;

/**
 * The second lot's share that brings a mix of two to a target.
 * @returns undefined while a figure is missing; a problem when no mix of these two meets it
 */
function shareForTarget(
  figures: Figures,
  first: AcidValue,
  second: AcidValue,
): Outcome<Exact> | undefined {
  const ffa = figures.in("%", "target");
  if (ffa === undefined) return undefined;
  const target = acidValueFromFfa(ffa);
  if (isProblem(target)) return target;
  const fraction = blend(second, first, target);
  if (isProblem(fraction)) return fraction;
  return fraction.times(hundred).toDecimalPlaces(tenths, second.lt(first) ? roundUp : roundDown);
}

function typedShares(draft: Draft, figures: Figures): Exact[] | undefined {
  const shares: Exact[] = [];
  for (const { lot } of draft.lots.slice(0, -1)) {
    const judged = figures.share(lot);
    if (judged.kind !== "figure") return undefined;
    shares.push(judged.value);
  }
  const rest = shares.reduce((left, share) => left.minus(share), hundred);
  return rest.gt(zero) ? [...shares, rest] : undefined;
}

/** Each lot's share, %; undefined while they are not known. */
function sharesOf(
  draft: Draft,
  figures: Figures,
  acid: readonly AcidValue[],
): Outcome<readonly Exact[]> | undefined {
  const [first, second] = acid;
  if (first === undefined) return undefined;
  if (second === undefined) return [hundred];
  if (acid.length === 2 && draft.picked.mixedBy === "target") {
    const share = shareForTarget(figures, first, second);
    if (share === undefined || isProblem(share)) return share;
    return [hundred.minus(share), share];
  }
  return typedShares(draft, figures);
}

/** The titrant was made of the batch's own lye, taken as pure: its acid values are that much too high. */
export const isTakenAsPure = (draft: Draft, lots: readonly RecordedLot[]): boolean =>
  draft.picked.titrantLye === "same" && lots.some(({ isAsIfPure }) => isAsIfPure);

const halfWidthOf = (lots: readonly MixedLot[], factor: number): number | undefined => {
  const known = lots.flatMap(({ recorded: { halfWidth, shared }, percent }) =>
    halfWidth === undefined
      ? []
      : [
          {
            halfWidth: halfWidth * factor,
            shared: shared * factor,
            share: percent.toNumber() / 100,
          },
        ],
  );
  return known.length === lots.length ? blendedHalfWidth(known) : undefined;
};

/** @returns undefined while a lot, its acid or a share is missing */
export function mixOf(
  draft: Draft,
  figures: Figures,
  recorded: readonly RecordedLot[],
): Outcome<Mix> | undefined {
  const chosen = chosenLots(draft, recorded);
  const found = chosen.flatMap((lot) =>
    lot?.acidValue === undefined
      ? []
      : [{ recorded: lot, acidValue: quantity("mg KOH/g", lot.acidValue) }],
  );
  if (found.length === 0 || found.length < chosen.length) return undefined;
  const shares = sharesOf(
    draft,
    figures,
    found.map(({ acidValue }) => acidValue),
  );
  if (shares === undefined || isProblem(shares)) return shares;
  const lots = found.map((lot, at) => ({ ...lot, percent: shares[at] ?? zero }));
  const mixed = lots.reduce(
    (acid, { acidValue, percent }) => acid.plus(acidValue.times(percent).div(hundred)),
    zero,
  );
  const asIfPure = isTakenAsPure(
    draft,
    lots.map(({ recorded: lot }) => lot),
  );
  const assay = figures.in("%", "assay");
  if (asIfPure && assay === undefined) return undefined;
  const factor = asIfPure && assay ? assay.div(hundred) : exact(1);
  // the row's other formulas work from the cell that holds it
  const acidValue = quantity("mg KOH/g", mixed.times(factor).toNumber());
  return {
    lots,
    acidValue,
    ffa: as("%", ffaAsOleic(acidValue)),
    halfWidth: halfWidthOf(lots, factor.toNumber()),
  };
}

/** Why these lots do not mix to what is asked, in % FFA as it was asked. */
export function mixTrouble(found: Problem): string {
  const { fields } = found;
  const percent = (value: AcidValue): string => fixed(ffaAsOleic(value), 2);
  if (fields.code === "equal-lots") return "Both lots have the same acid: any mix has it too.";
  if (fields.code !== "target-outside") return say(found);
  const [low, high] = [fields.low, fields.high].map((edge) => percent(as("mg KOH/g", edge)));
  return `These two lots mix to between ${low ?? ""} and ${high ?? ""} % FFA, never to ${percent(as("mg KOH/g", fields.target))} %.`;
}
