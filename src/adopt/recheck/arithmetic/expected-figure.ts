/** The figure that a column of some role should hold in a row, in the column's unit. */
import type { RoleId } from "../../recognising/roles";
import type { Readings } from "../reading/readings";
import type { Ways } from "./ways";
import {
  acidValue,
  correctedTitre,
  ffaPercent,
  type From,
  kilograms,
  litres,
  meanTitre,
  times,
} from "./row-arithmetic";
import { asWeighed, lye, pureAcid, pureLye, pureReaction } from "./row-lye";

/** Is a dose written down as pure base, or as it is weighed? Its heading tells; of a part, else the sum. */
export type Written = "pure" | "weighed";

const without = (from: From, role: RoleId): From => {
  if (!from.has(role)) return from;
  const others = new Map(from);
  others.delete(role);
  return others;
};

function dose(
  role: RoleId,
  written: Written,
  r: Readings,
  w: Ways,
  from: From,
): number | undefined {
  if (role === "catalyst" || role === "catalystRate" || role === "weighed")
    return written === "pure" ? pureLye(r, w, from) : lye(r, w, from);
  const pure = role === "acidDose" ? pureAcid(r, w, from) : pureReaction(r, w, from);
  if (!pure) return undefined;
  return written === "pure" ? pure : asWeighed(r, w, pure);
}

/** Of a litre, of a kilogram, of a hundredth part of a kilogram; of all of it in any other unit. */
export function parts(
  unit: string | undefined,
  r: Readings,
  w: Ways,
  from: From,
): number | undefined | "all" {
  if (unit === "g/L") return litres(r, w, from);
  if (unit === "g/kg") return kilograms(r, w, from);
  return unit === "%" ? times(kilograms(r, w, from), 10) : "all";
}

function figure(
  role: RoleId,
  unit: string | undefined,
  written: Written,
  r: Readings,
  w: Ways,
  from: From,
): number | undefined {
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
      const of = parts(unit, r, w, from);
      if (of === undefined) return undefined;
      return of === "all" ? whole : times(whole, 1 / of);
    }
  }
}

export function expectedFigure(
  role: RoleId,
  unit: string | undefined,
  written: Written,
  r: Readings,
  w: Ways,
  given: From,
): number | undefined {
  const right = figure(role, unit, written, r, w, without(given, role));
  return right === undefined || !w.result ? right : w.result(right);
}

/** A part of a dose as it stands in `from`: grams of pure base for all of the oil. */
export function asPure(
  held: number,
  unit: string | undefined,
  written: Written,
  r: Readings,
): number | undefined {
  const of = parts(unit, r, {}, new Map());
  const grams = of === "all" ? held : times(of, held);
  return written === "pure" || !r.assay ? grams : times(grams, r.assay / 100);
}
