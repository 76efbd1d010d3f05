/** What a wrong dose means at the vessel: grams of lye too many or too few, and acid left over. */
import { amountUnits, type AmountUnit } from "../../../core/quantity/units";
import { acidPerKilogram } from "../../../core/titration/acid-value";
import { quantity } from "../../../core/quantity/quantity";
import { coreFigures } from "../arithmetic/core-figures";
import type { Readings } from "../reading/readings";
import type { Ways } from "../arithmetic/ways";
import { acidValue, fromNothing, kilograms } from "../arithmetic/row-arithmetic";
import { lye } from "../arithmetic/row-lye";

export interface Effect {
  /** As weighed; below 0: too little lye. */
  readonly grams: number;
  /** Of the batch, or of each kilogram of oil where the row holds no amount. */
  readonly of: "batch" | "kilogram";
  /** Acid that was not neutralised. */
  readonly acidLeftMoles: number;
  readonly acidLeftPercent: number;
  /** It is of all the row's mistakes together: the grams this one makes of it, where they can be told apart. */
  readonly together?: { readonly ofIt: number | undefined };
}

/** Two effects that differ by less than this share are the same. */
const share = 0.01;

export const isSame = (one: Effect | undefined, other: Effect | undefined): boolean =>
  one !== undefined &&
  other !== undefined &&
  one.of === other.of &&
  Math.abs(one.grams - other.grams) <= share * Math.abs(one.grams) &&
  Math.abs(one.acidLeftPercent - other.acidLeftPercent) <= 100 * share;

/** What all causes that may be it come to; undefined where they do not agree. */
export const agreed = ([first, ...others]: readonly (Effect | undefined)[]): Effect | undefined =>
  others.every((each) => isSame(first, each)) ? first : undefined;

const kilogram = amountUnits.find(({ name }) => name === "kg") as AmountUnit;

/** The row as a dose can be worked out for it: of a kilogram, of pure lye, without a charge, if need be. */
const asDosable = (r: Readings): Readings => ({
  ...r,
  amount: r.amount ?? { value: 1, unit: kilogram },
  assay: r.assay ?? 100,
  charge: r.charge ?? { value: 0, per: "%", basis: "pure" },
});
const isDosable = ({ amount, assay, charge }: Readings): boolean =>
  amount !== undefined && assay !== undefined && charge !== undefined;
const dosable = (r: Readings): Readings => (isDosable(r) ? r : asDosable(r));

/** A row is asked several times what it should have had. */
const known = new WeakMap<Readings, ReturnType<typeof coreFigures>>();
function coreOf(r: Readings): ReturnType<typeof coreFigures> {
  const before = known.get(r);
  if (before) return before;
  const core = coreFigures(dosable(r));
  known.set(r, core);
  return core;
}

/** g of lye, as weighed, that the row should have had: for acid and reaction, or for the acid alone. */
export const rightLye = (
  r: Readings,
  role: "catalyst" | "acidDose" = "catalyst",
): number | undefined => coreOf(r)(role);

/** g of lye that a way of working gives. */
export const lyeBy = (r: Readings, ways: Ways): number | undefined =>
  lye(dosable(r), ways, fromNothing);

/** @param grams as weighed, below 0 for too little */
export function effectOf(readings: Readings, grams: number): Effect | undefined {
  const r = dosable(readings);
  const value = acidValue(r, {}, fromNothing);
  const mass = kilograms(r, {}, fromNothing);
  if (value === undefined || mass === undefined || !r.base || r.assay === undefined)
    return undefined;
  const acid = acidPerKilogram(quantity("mg KOH/g", value)).toNumber() * mass;
  const short = (-grams * r.assay) / 100 / r.base.molarMass.toNumber();
  const left = Math.min(Math.max(short, 0), acid);
  return {
    grams,
    of: readings.amount ? "batch" : "kilogram",
    acidLeftMoles: left,
    acidLeftPercent: acid > 0 ? (100 * left) / acid : 0,
  };
}
