/** The lye of a row, for the acid, for the reaction and in all: the right way or a wrong one. */
import { type FattyAcid, oleic } from "../../../core/reference/fatty-acids";
import type { Readings } from "../reading/readings";
import { coefficientOf, molarMass, reportedMass } from "./molar-masses";
import type { Figure, Ways } from "./ways";
import {
  acidValue,
  definition,
  ffaPercent,
  type From,
  kilograms,
  litres,
  times,
} from "./row-arithmetic";

/** g of pure base for the reaction. */
export function pureReaction(r: Readings, w: Ways, from: From): Figure {
  if (!r.charge) return undefined;
  const { per } = r.charge;
  const value = r.charge.value * (w.chargeScale ?? 1);
  if (per === "g/L") return times(litres(r, w, from), value);
  return times(kilograms(r, w, from), per === "%" ? value * 10 : value);
}

/** A percentage worked out with another acid's mass, or a right one that is read as another acid's. */
function withAcid(acid: FattyAcid | undefined, isGiven: boolean): number {
  if (!acid) return 1;
  const ratio = reportedMass(acid) / reportedMass(oleic);
  return isGiven ? 1 / ratio : ratio;
}

/** g of pure base for the acid. */
export function pureAcid(r: Readings, w: Ways, from: From): Figure {
  if (w.acidPart)
    return w.acidPart(
      () => from.get("ffa") ?? ffaPercent(r, w, from),
      () => pureReaction(r, w, from),
    );
  const value = acidValue(r, w, from);
  const mass = kilograms(r, w, from);
  const base = w.otherBase ?? r.base;
  if (value === undefined || mass === undefined || !base) return undefined;
  const scale = w.ffaScale !== undefined && !from.has("ffa") ? w.ffaScale : 1;
  return (
    ((mass * value * scale) / definition) *
    molarMass(base) *
    withAcid(w.acid, from.has("ffa")) *
    (r.byCoefficient === true ? coefficientOf(base) : 1)
  );
}

/** What pure base is multiplied by to be what is weighed; undefined when the assay is not known. */
function weighing({ assay }: Readings, w: Ways): Figure {
  if (assay === undefined) return undefined;
  return w.weighing ? w.weighing(assay) : 100 / assay;
}

/** Pure base as it is weighed. */
export const asWeighed = (r: Readings, w: Ways, pure: number): Figure =>
  times(weighing(r, w), pure);

/**
 * g of lye as weighed, for acid and reaction. Doses that the sheet holds stand in `from` as pure, a
 * dose for a litre as weighed.
 */
export function lye(r: Readings, w: Ways, from: From): Figure {
  const rate = from.get("catalystRate");
  if (rate !== undefined) return times(litres(r, w, from), rate);
  const acid = from.get("acidDose") ?? pureAcid(r, w, from);
  const reaction = from.get("reactionDose") ?? pureReaction(r, w, from);
  if (acid === undefined || reaction === undefined) return undefined;
  return asWeighed(r, w, acid + reaction);
}

/** g of pure base in all: no assay is in it, unless it starts from a dose as weighed. */
export function pureLye(r: Readings, w: Ways, from: From): Figure {
  if (from.has("catalystRate")) return times(lye(r, w, from), (r.assay ?? 100) / 100);
  return lye({ ...r, assay: 100 }, { ...w, weighing: () => 1 }, from);
}
