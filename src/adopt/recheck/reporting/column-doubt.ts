/**
 * A column that follows from its readings in hardly any row, for no known cause: then the column, its
 * unit or a figure for all rows is the likelier fault, and no row is accused of it.
 */
import type { MappedColumn } from "../../recognising/mapping";
import { type RoleId, roleOf } from "../../recognising/roles";
import type { CheckedRow } from "../judging/checked";
import type { Finding, Unchecked } from "./finding";

const leastRows = 4;
const mostOfRows = 0.75;

/** A mistake that is made all the time gives most of what is wrong. */
const mostOfWrong = 0.5;

interface Count {
  all: number;
  readonly wrong: Finding[];
}

/** The one mistake, where a finding has one: the same figure all the way down is none. */
const causeOf = ({ mistake, also }: Finding): string | undefined =>
  also !== undefined || mistake === "not-recognised" || mistake === "copied-from-above"
    ? undefined
    : mistake;

/** How often the commonest mistake was made. */
function commonest(findings: readonly Finding[]): number {
  const counts = new Map<string, number>();
  for (const each of findings) {
    const cause = causeOf(each);
    if (cause !== undefined) counts.set(cause, (counts.get(cause) ?? 0) + 1);
  }
  return Math.max(0, ...counts.values());
}

export class ColumnDoubts {
  private readonly counts = new Map<RoleId, Count>();

  look({ figures, findings }: CheckedRow): void {
    for (const { figure, verdict } of figures) {
      if (verdict.kind === "not-checked") continue;
      const count = this.counts.get(figure.role) ?? { all: 0, wrong: [] };
      count.all += 1;
      count.wrong.push(...findings.filter(({ role }) => role === figure.role));
      this.counts.set(figure.role, count);
    }
  }

  /** Findings that are none, and what is said instead. */
  found(columnOf: (role: RoleId) => MappedColumn | undefined): {
    readonly instead: readonly Unchecked[];
    readonly not: ReadonlySet<Finding>;
  } {
    const not = new Set<Finding>();
    const instead: Unchecked[] = [];
    for (const [role, { all, wrong }] of this.counts) {
      const [first] = wrong;
      if (!first || all < leastRows || wrong.length < mostOfRows * all) continue;
      if (commonest(wrong) >= mostOfWrong * wrong.length) continue;
      wrong.forEach((each) => not.add(each));
      const heading = columnOf(role)?.heading ?? "";
      instead.push({
        sheet: first.sheet,
        why: `${heading === "" ? roleOf(role).words : heading}, since it agrees with its readings in hardly any row: look at what the column is, at its unit and at the figures for all rows`,
        rows: wrong.map(({ row }) => row),
      });
    }
    return { instead, not };
  }
}
