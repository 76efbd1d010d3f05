/** The figure that a column of some role should hold in a row, in the column's unit. */
import { type Exact, hundred, ten } from "../../core/exact/exact";
import type { RoleId } from "../recognising/roles";
import type { Readings } from "./readings";
import {
  acidValue,
  asWeighed,
  correctedTitre,
  ffaPercent,
  type From,
  kilograms,
  litres,
  lye,
  meanTitre,
  pureAcid,
  pureReaction,
  type Ways,
} from "./worked";

/** Is a part of the dose written down as pure base, or as it is weighed? Only the sum tells. */
export type Written = "pure" | "weighed";

const without = (from: From, role: RoleId): From => {
  if (!from.has(role)) return from;
  const others = new Map(from);
  others.delete(role);
  return others;
};

function dose(role: RoleId, written: Written, r: Readings, w: Ways, from: From): Exact | undefined {
  if (role === "catalyst" || role === "catalystRate" || role === "weighed") return lye(r, w, from);
  const pure = role === "acidDose" ? pureAcid(r, w, from) : pureReaction(r, w, from);
  if (!pure) return undefined;
  return written === "pure" ? pure : asWeighed(r, w, pure);
}

/** Of a litre, of a kilogram, of a hundredth part of a kilogram; of all of it in any other unit. */
function per(
  unit: string | undefined,
  r: Readings,
  w: Ways,
  from: From,
): Exact | undefined | "all" {
  if (unit === "g/L") return litres(r, w, from);
  if (unit === "g/kg") return kilograms(r, w, from);
  return unit === "%" ? kilograms(r, w, from)?.times(ten) : "all";
}

export function workedOut(
  role: RoleId,
  unit: string | undefined,
  written: Written,
  r: Readings,
  w: Ways,
  given: From,
): Exact | undefined {
  const from = without(given, role);
  switch (role) {
    case "meanTitre":
      return meanTitre(r, w);
    case "correctedTitre":
      return correctedTitre(r, w, from);
    case "acidValue":
      return acidValue(r, w, from);
    case "ffa":
      return ffaPercent(r, w, from);
    case "oilMass":
      return kilograms(r, w, from);
    default: {
      const whole = dose(role, written, r, w, from);
      const parts = per(unit, r, w, from);
      return parts === "all" ? whole : parts && whole?.div(parts);
    }
  }
}

/** A part of a dose as it stands in `from`: grams of pure base for all of the oil. */
export function asPure(
  held: Exact,
  unit: string | undefined,
  written: Written,
  r: Readings,
): Exact | undefined {
  const parts = per(unit, r, {}, new Map());
  const grams = parts === "all" ? held : parts && held.times(parts);
  return written === "pure" || !r.assay ? grams : grams?.times(r.assay).div(hundred);
}
