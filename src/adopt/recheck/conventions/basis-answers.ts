/**
 * Questions that nobody answered: are grams of lye pure, or as they come out of the bag? The rows
 * are read with each answer; no answer is learned from what comes nearest.
 */
import type { Basis } from "../../recognising/basis";
import type { Readings } from "../reading/readings";
import { canBeSameFlake } from "./conventions";

export interface Answers {
  /** Of the titrant's grams, of the base charge. */
  readonly strength: Basis;
  readonly charge: Basis;
  /** Which of the acid values that the lot's titration comes to, where they hang on an answer there. */
  readonly lot: number;
}

/** As good as pure: either answer comes to the same. */
const isNearlyPure = ({ assay }: Readings): boolean => assay === undefined || assay >= 99.5;

const isStrengthOpen = (r: Readings): boolean =>
  r.strengthBasis === undefined && !isNearlyPure(r) && canBeSameFlake(r);
const isChargeOpen = (r: Readings): boolean =>
  r.charge !== undefined && r.charge.basis === undefined && !isNearlyPure(r);

const bases: readonly Basis[] = ["pure", "as weighed"];
const ifOpen = (isOpen: boolean): readonly Basis[] => (isOpen ? bases : ["pure"]);

/** All answers that a logbook's rows can be read with; one where no question is open. */
export function answersFor(rows: readonly Readings[]): Answers[] {
  const lots = Math.max(1, ...rows.map(({ ofLot }) => ofLot?.acidValues.length ?? 1));
  return ifOpen(rows.some(isStrengthOpen)).flatMap((strength) =>
    ifOpen(rows.some(isChargeOpen)).flatMap((charge) =>
      Array.from({ length: lots }, (_, lot) => ({ strength, charge, lot })),
    ),
  );
}

/** The row with what nobody said of it answered. */
export function answered(r: Readings, { strength, charge, lot }: Answers): Readings {
  const acidValue = r.ofLot && (r.ofLot.acidValues[lot] ?? r.ofLot.acidValue);
  return {
    ...r,
    ...(isStrengthOpen(r)
      ? { strengthBasis: strength, strengthAssay: strength === "pure" ? 100 : (r.assay ?? 100) }
      : {}),
    ...(r.charge && isChargeOpen(r) ? { charge: { ...r.charge, basis: charge } } : {}),
    ...(r.ofLot ? { ofLot: { ...r.ofLot, acidValue } } : {}),
  };
}
