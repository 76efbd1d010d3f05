/** What one used to weigh, against the dose, in sentences. */
import { formerAmount, isByFraction } from "../../core/batch/former-amount";
import { hundred } from "../../core/exact/exact";
import { isProblem } from "../../core/problem/problem";
import { fixed } from "../widgets/shown-number";
import { withMark } from "../widgets/typed-number";
import { amount } from "./amount-text";
import type { Seen } from "./seen";

export interface FormerWords {
  readonly tone: "know" | "check";
  readonly sentence: string;
}

/** Within the titration's doubt, or a percent of the dose, two amounts are one. */
const nearlyPercent = 1;

/** @returns nothing while there is no dose or no former amount */
export function formerWords(seen: Seen): readonly FormerWords[] {
  const { figures, working, mark } = seen;
  const { batch: made, mix, halfWidth } = working;
  const former = figures.in("g", "former");
  const assay = figures.in("%", "assay");
  if (!former || !assay || !made || isProblem(made) || !mix || isProblem(mix)) return [];

  const parts = { ...made, assay };
  const found = formerAmount(former, parts);
  const off = found.difference.abs();
  const percent = (share: typeof found.acidLeft): string =>
    withMark(fixed(share.times(hundred), 0), mark);
  const grams = `${amount(off, mark)} g`;
  const isNear =
    off.lte(halfWidth ?? 0) || off.times(hundred).lte(made.catalyst.times(nearlyPercent));
  if (isNear) {
    return [
      {
        tone: "know",
        sentence: `That is the dose, within ${halfWidth ? "its uncertainty" : "one percent"}.`,
      },
    ];
  }
  const said: FormerWords[] = [
    found.difference.isNegative()
      ? {
          tone: "check",
          sentence: `That is ${grams} less than this oil’s acid and your base charge ask for. If the reaction had its whole base charge, ${percent(found.acidLeft)} % of the acid would be left over; the acid comes first, so ${percent(found.chargeLeft)} % of the charge is left for the reaction.`,
        }
      : {
          tone: "check",
          sentence: `That is ${grams} more than this oil’s acid and your base charge ask for: more soap, and a harder wash (common practice, no source).`,
        },
  ];
  if (!isByFraction(former, mix.ffa, parts)) return said;
  return [
    ...said,
    {
      tone: "know",
      sentence: `It fits a rule that many were taught: the base charge, and the acid’s percentage of that charge. That takes a share of the lye for a share of the oil, and here it costs ${grams} of lye. Each mole of acid takes one mole of base: ${amount(made.pureForAcid, mark)} g of pure ${working.base.name} for this oil.`,
    },
  ];
}
