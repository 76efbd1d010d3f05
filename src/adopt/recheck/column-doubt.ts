/**
 * A column that follows from its readings in hardly any row, for no known cause: then the column, its
 * unit or a figure for all rows is the likelier fault, and no row is accused of it.
 */
import type { MappedColumn } from "../recognising/mapping";
import { type RoleId, roleOf } from "../recognising/roles";
import type { CheckedRow } from "./checked";
import type { Finding, Unchecked } from "./finding";

const leastRows = 4;
const mostOfRows = 0.75;

interface Count {
  all: number;
  readonly odd: Finding[];
}

/** Unexplained, or only by two mistakes at once, or the same figure all the way down. */
const isOdd = ({ mistake, also }: Finding): boolean =>
  mistake === "not-recognised" || mistake === "copied-from-above" || also !== undefined;

export class ColumnDoubts {
  private readonly counts = new Map<RoleId, Count>();

  look({ figures, findings }: CheckedRow): void {
    for (const { figure, verdict } of figures) {
      if (verdict.kind === "not-checked") continue;
      const count = this.counts.get(figure.role) ?? { all: 0, odd: [] };
      count.all += 1;
      count.odd.push(...findings.filter((each) => each.role === figure.role && isOdd(each)));
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
    for (const [role, { all, odd }] of this.counts) {
      const [first] = odd;
      if (!first || all < leastRows || odd.length < mostOfRows * all) continue;
      odd.forEach((each) => not.add(each));
      const heading = columnOf(role)?.heading ?? "";
      instead.push({
        sheet: first.sheet,
        why: `${heading === "" ? roleOf(role).words : heading}, since it agrees with its readings in hardly any row: look at what the column is, at its unit and at the figures for all rows`,
        rows: odd.map(({ row }) => row),
      });
    }
    return { instead, not };
  }
}
