/** What rows all over a logbook tell of it: its commonest mistakes, and which figures it keeps to their digits. */
import type { RoleId } from "../../recognising/roles";
import type { CheckedFigure, CheckedRow } from "../judging/checked";
import type { Written } from "../arithmetic/expected-figure";
import { keyOf, type Slip } from "../judging/slips";

const isPart = (role: RoleId): boolean => role === "acidDose" || role === "reactionDose";

/** The commonest mistake of each column. */
export function usualSlipsOf(figures: readonly CheckedFigure[]): ReadonlyMap<RoleId, Slip> {
  const counts = new Map<RoleId, Map<string, { slip: Slip; count: number }>>();
  for (const { figure, verdict } of figures) {
    // What may be another mistake as well speaks for none.
    if (verdict.kind !== "wrong" || !verdict.slip || verdict.orElse.length > 0) continue;
    const ofRole = counts.get(figure.role) ?? new Map<string, { slip: Slip; count: number }>();
    const key = keyOf(verdict.slip);
    ofRole.set(key, { slip: verdict.slip, count: (ofRole.get(key)?.count ?? 0) + 1 });
    counts.set(figure.role, ofRole);
  }
  return new Map(
    [...counts].flatMap(([role, slips]) => {
      const [first] = [...slips.values()].sort((one, other) => other.count - one.count);
      return first ? [[role, first.slip] as const] : [];
    }),
  );
}

const leastRows = 4;
const goodPart = 0.8;

/** Figures that come out to their digits in nearly all rows, but for those that one mistake explains. */
export function exactIn(
  misfits: readonly ReadonlyMap<RoleId, number>[],
  checked: readonly CheckedRow[],
): ReadonlySet<RoleId> {
  const counts = new Map<RoleId, { all: number; fit: number; explained: number }>();
  checked.forEach(({ figures }, at) => {
    for (const { figure, verdict } of figures) {
      const off = misfits[at]?.get(figure.role);
      if (off === undefined) continue;
      const count = counts.get(figure.role) ?? { all: 0, fit: 0, explained: 0 };
      count.all += 1;
      if (off <= 1) count.fit += 1;
      else if (verdict.kind === "wrong" && verdict.slip?.made.length === 1) count.explained += 1;
      counts.set(figure.role, count);
    }
  });
  return new Set(
    [...counts].flatMap(([role, { all, fit, explained }]) =>
      all >= leastRows && fit > 0 && fit + explained >= goodPart * all ? [role] : [],
    ),
  );
}

/** Whether a part of a dose is pure or as weighed in nearly all rows that are right. */
export function usualWritten(checked: readonly CheckedRow[]): ReadonlyMap<RoleId, Written> {
  const all = checked.flatMap(({ figures }) =>
    figures.flatMap(({ figure: { role }, verdict }) =>
      isPart(role) && verdict.kind === "right" ? [{ role, written: verdict.written }] : [],
    ),
  );
  return new Map(
    [...new Set(all.map(({ role }) => role))].flatMap((role) => {
      const own = all.filter((each) => each.role === role);
      const pure = own.filter(({ written }) => written === "pure").length / own.length;
      if (own.length < leastRows || (pure > 1 - goodPart && pure < goodPart)) return [];
      return [[role, pure >= goodPart ? "pure" : "weighed"] as const];
    }),
  );
}
