/** What a wrong dose means at the vessel: grams of lye too many or too few, and acid left over. */
import { type Exact, exact, hundred, zero } from "../../core/exact/exact";
import { acidPerKilogram } from "../../core/titration/acid-value";
import { amountUnits, type AmountUnit } from "../../core/quantity/units";
import type { AcidValue } from "../../core/quantity/quantity";
import type { Readings } from "./readings";
import { acidValue, asWeighed, fromNothing, kilograms, lye, pureAcid, type Ways } from "./worked";

export interface Effect {
  /** As weighed; below 0: too little lye. */
  readonly grams: number;
  /** Of the batch, or of each kilogram of oil where the row holds no amount. */
  readonly of: "batch" | "kilogram";
  /** Acid that finds no lye. */
  readonly acidLeftMoles: number;
  readonly acidLeftPercent: number;
}

const kilogram = amountUnits.find(({ name }) => name === "kg") as AmountUnit;

/** The row as a dose can be worked out for it: of a kilogram, of pure lye, without a charge, if need be. */
function dosable(r: Readings): Readings {
  return {
    ...r,
    amount: r.amount ?? { value: exact(1), unit: kilogram },
    assay: r.assay ?? hundred,
    charge: r.charge ?? { value: zero, per: "%" },
  };
}

/** g of lye, as weighed, that the row should have had. */
export const rightLye = (r: Readings): Exact | undefined => lye(dosable(r), {}, fromNothing);

/** g of lye that a way of working gives. */
export const lyeBy = (r: Readings, ways: Ways): Exact | undefined =>
  lye(dosable(r), ways, fromNothing);

/** g for the acid alone, as weighed: what a column of that name should come to. */
export function rightAcidLye(r: Readings): Exact | undefined {
  const given = dosable(r);
  const pure = pureAcid(given, {}, fromNothing);
  return pure && asWeighed(given, {}, pure);
}

/** @param off g as weighed, below 0 for too little */
export function effectOf(readings: Readings, off: Exact): Effect | undefined {
  const r = dosable(readings);
  const value = acidValue(r, {}, fromNothing);
  const mass = kilograms(r, {}, fromNothing);
  if (!value || !mass || !r.base || !r.assay) return undefined;
  const acid = acidPerKilogram(value as AcidValue)
    .times(mass)
    .toNumber();
  const short = off.negated().times(r.assay).div(hundred).div(r.base.molarMass).toNumber();
  const left = Math.min(Math.max(short, 0), acid);
  return {
    grams: off.toNumber(),
    of: readings.amount ? "batch" : "kilogram",
    acidLeftMoles: left,
    acidLeftPercent: acid > 0 ? (100 * left) / acid : 0,
  };
}
