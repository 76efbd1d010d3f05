/** Why a figure that a row holds could not be worked out: what is missing for it, in words. */
import { andList } from "../../../sheet/and-list";
import type { MappedColumn } from "../../recognising/mapping";
import { type RoleId, roleOf } from "../../recognising/roles";
import type { CheckedFigure } from "../judging/checked";
import { isDose } from "../mistakes/mistake";
import type { Readings } from "../reading/readings";
import { acidValue, fromNothing, hasTitration } from "../arithmetic/row-arithmetic";

function missing(role: RoleId, unit: string | undefined, r: Readings): string[] {
  const isRate = unit === "g/L" || unit === "g/kg" || unit === "%";
  const needsAcid = role !== "reactionDose";
  const needsCharge = role !== "acidDose";
  return [
    ...(r.amount || isRate ? [] : ["the amount of oil"]),
    ...(needsAcid && acidValue(r, {}, fromNothing) === undefined ? ["the acid value"] : []),
    ...(needsAcid && !r.base ? ["the base"] : []),
    ...(needsCharge && !r.charge ? ["the base charge"] : []),
    ...(r.assay === undefined ? ["the assay of the lye"] : []),
  ];
}

/** Goes on from "not checked: "; undefined where another reason is given already. */
export function whyNotChecked(
  { figure: { role }, verdict }: CheckedFigure,
  column: MappedColumn | undefined,
  r: Readings,
): string | undefined {
  if (verdict.kind !== "not-checked" || r.unread.length > 0) return undefined;
  const name = column?.heading ? column.heading : roleOf(role).words;
  if (!isDose(role))
    return hasTitration(r)
      ? `${name}, since its row does not say all that it rests on`
      : `${name}, since no titration of it is here; it counts as given`;
  const all = missing(role, column?.unit, r);
  return all.length === 0
    ? `${name}, since it cannot be worked out from its row`
    : `${name}, since ${andList(all)} ${all.length === 1 ? "is" : "are"} not known`;
}
