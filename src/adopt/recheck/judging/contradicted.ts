/**
 * A cause that a right cell of the same row speaks against: where the net titre is right, the blank was
 * subtracted, and a total that is off is off for another reason.
 */
import type { RoleId } from "../../recognising/roles";
import type { Checking } from "./checking";
import type { RightFigure } from "./right-figure";
import type { Slip } from "./slips";
import type { Ways } from "../arithmetic/ways";
import type { From } from "../arithmetic/row-arithmetic";
import { expectedFigure } from "../arithmetic/expected-figure";

const ofTitre: readonly (keyof Ways)[] = ["mean", "lessBlank"];
const ofOil: readonly (keyof Ways)[] = ["oilDensity", "unit", "kilogramsAsLitres"];

/** Ways that a right figure would show; a right % FFA may well be used as something else further on. */
const showing: Readonly<Partial<Record<RoleId, readonly (keyof Ways)[]>>> = {
  meanTitre: ["mean"],
  correctedTitre: ofTitre,
  acidDose: [
    ...ofTitre,
    ...ofOil,
    "net",
    "molarity",
    "sampleDensity",
    "acid",
    "ffaScale",
    "acidPart",
    "otherBase",
  ],
  reactionDose: [...ofOil, "chargeScale"],
};

function shownBy(right: RightFigure, { ways }: Slip): Ways {
  const kept = (showing[right.role] ?? []).filter((key) => key in ways);
  return Object.fromEntries(kept.map((key) => [key, ways[key]])) as Ways;
}

/** @param from what the working starts from: a right figure in it is used, and not contradicted */
export function isContradicted({ right, readings, facts }: Checking, slip: Slip, from: From) {
  return right.some((each) => {
    // A formula that reads its figures elsewhere goes past the right cell.
    if (from.has(each.role) || (facts && !facts.roles.has(each.role))) return false;
    const ways = shownBy(each, slip);
    if (Object.keys(ways).length === 0) return false;
    const other = expectedFigure(each.role, each.unit, each.written, readings, ways, from);
    const own = expectedFigure(each.role, each.unit, each.written, readings, {}, from);
    if (other === undefined || own === undefined) return false;
    return Math.abs(other - own) > each.halfDigit + 0.001 * Math.abs(own);
  });
}
