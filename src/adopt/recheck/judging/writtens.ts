/** Whether a dose that a row holds may be pure base, lye as it is weighed, or either. */
import { doseBasisOf } from "../../recognising/basis";
import type { MappedColumn } from "../../recognising/mapping";
import type { RoleId } from "../../recognising/roles";
import { isDose } from "../mistakes/mistake";
import type { Readings } from "../reading/readings";
import { fromNothing } from "../arithmetic/row-arithmetic";
import { parts, type Written } from "../arithmetic/expected-figure";

type Columns = ReadonlyMap<RoleId, MappedColumn>;

/** A rate is written in few digits. */
const sameRate = 0.003;

const isPart = (role: RoleId): boolean => role === "acidDose" || role === "reactionDose";

/** What the heading of a dose says. */
function saidOf(columns: Columns, role: RoleId): Written | undefined {
  const column = isDose(role) ? columns.get(role) : undefined;
  const basis = column && doseBasisOf(column);
  return basis === "as weighed" ? "weighed" : basis;
}

/** Is the total what a rate of pure base comes to as weighed? */
function isRateOfPure(columns: Columns, r: Readings): boolean {
  const rate = r.held.get("catalystRate");
  const total = r.held.get("catalyst") ?? r.held.get("weighed");
  const of = parts(columns.get("catalystRate")?.unit, r, {}, fromNothing);
  if (!rate || !total || !r.assay || of === undefined || of === "all") return false;
  const weighed = (rate.value * of * 100) / r.assay;
  return Math.abs(total.value - weighed) <= total.halfDigit + sameRate * weighed;
}

/**
 * A dose is written down as its heading says; where it says nothing, a total shows whether a part of
 * it, or a dose for a litre, is pure or as weighed.
 */
export function writtensOf(columns: Columns, role: RoleId, r: Readings): Written[] {
  const said = saidOf(columns, role);
  if (said) return [said];
  if (role === "catalystRate") return isRateOfPure(columns, r) ? ["pure"] : ["weighed"];
  const hasTotal = columns.has("catalyst") || columns.has("catalystRate") || columns.has("weighed");
  return isPart(role) && (hasTotal || r.assay === undefined) ? ["weighed", "pure"] : ["weighed"];
}

/** What a figure that was not worked out is taken for: a part of a dose for pure. */
export const takenAs = (columns: Columns, role: RoleId): Written =>
  saidOf(columns, role) ?? (isPart(role) ? "pure" : "weighed");
