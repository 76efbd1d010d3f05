/** A batch whose acid value is that of its lot in another table, or a figure of its own. */
import { ffaPercent, hasTitration } from "./row-arithmetic";
import type { HeldFigure } from "../reading/held-figure";
import type { Readings } from "../reading/readings";
import type { Upstream } from "./upstream";

/** The other table's figure may have been copied by hand, a little rounded. */
const copied = 0.005;

const isNear = (held: HeldFigure, of: number | undefined): boolean =>
  of !== undefined && Math.abs(held.value - of) <= held.halfDigit * 1.01 + Math.abs(of) * copied;

const isAnother = (held: HeldFigure | undefined, others: readonly number[]): boolean =>
  held !== undefined &&
  others.some((each) => Math.abs(held.value - each) <= held.halfDigit * 1.0000001);

/** A blend, or a titration that is not in the book, is a figure of its own: it counts as given. */
export function settledAcid(r: Readings): Readings {
  if (hasTitration(r) || !r.ofLot) return r;
  const { acidValue, heldAcidValue, heldFfa } = r.ofLot;
  const value = r.held.get("acidValue");
  const ffa = r.held.get("ffa");
  const asFfa =
    acidValue === undefined ? undefined : ffaPercent(r, {}, new Map([["acidValue", acidValue]]));
  const isValueOfLot = !value || isNear(value, acidValue) || isNear(value, heldAcidValue);
  const isFfaOfLot = !ffa || isNear(ffa, asFfa) || isNear(ffa, heldFfa);
  if (isValueOfLot && isFfaOfLot) return r;
  // To its digits what a lot titrated beside it holds is more likely a slip of the line than a blend.
  const isOther = isAnother(value, r.ofLot.otherAcidValues) || isAnother(ffa, r.ofLot.otherFfas);
  if (isOther) return r;
  const own = { ...r };
  delete own.ofLot;
  return own;
}

/** Is a batch's acid figure the lot's own, as the other table holds it? */
export function isCopied(figure: HeldFigure, r: Readings): boolean {
  if (!r.ofLot || hasTitration(r)) return false;
  const { heldAcidValue, heldFfa } = r.ofLot;
  if (figure.role === "acidValue") return isNear(figure, heldAcidValue);
  return figure.role === "ffa" && isNear(figure, heldFfa);
}

/** What the lot's row in the other table holds, as something this row may have started from. */
export function lotFigures(r: Readings): Upstream[] {
  if (!r.ofLot || hasTitration(r)) return [];
  const { heldAcidValue, heldFfa, doubts } = r.ofLot;
  // 0.12 % may have been 0.116 %, and the batch gone on from that
  const figure = (role: "acidValue" | "ffa", value: number | undefined): readonly Upstream[] =>
    value === undefined
      ? []
      : [{ role, value, doubt: Math.max(copied / 2, doubts[role]), isOfLot: true }];
  return [...figure("acidValue", heldAcidValue), ...figure("ffa", heldFfa)];
}
