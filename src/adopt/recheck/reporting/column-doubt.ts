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

/** Doses that hang on what the grams of the base charge are, in words. */
const ofCharge: Readonly<Partial<Record<RoleId, string>>> = {
  catalyst: "The total doses",
  catalystRate: "The doses of a litre or a kilogram",
  reactionDose: "The doses for the reaction",
};

/** @param isAnswered somebody, or a heading, said what the grams of the base charge are */
function doubtIn(role: RoleId, heading: string, isAnswered: boolean): { readonly doubt?: string } {
  const which = ofCharge[role];
  if (!isAnswered || which === undefined) return {};
  const named = heading === "" ? which : `${which}, “${heading}”,`;
  return {
    doubt: `${named} were not checked: almost none fit. Is the base charge pure lye, or as weighed?`,
  };
}

/** A dose that is not checked says nothing of what a mistake did. */
const withoutItsDose = ({ byDose, ...finding }: Finding): Finding => ({
  ...finding,
  dose: "unchecked",
  effect: byDose?.worked,
});

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

  /** What is left of the findings, and what is said instead. */
  found(
    all: readonly Finding[],
    columnOf: (role: RoleId) => MappedColumn | undefined,
    isAnswered: boolean,
  ): {
    readonly instead: readonly Unchecked[];
    readonly findings: readonly Finding[];
    /** Roles that count as not checked, with how many figures of each. */
    readonly roles: ReadonlyMap<RoleId, number>;
  } {
    const not = new Set<Finding>();
    const roles = new Map<RoleId, number>();
    const instead: Unchecked[] = [];
    for (const [role, { all: figures, wrong }] of this.counts) {
      const [first] = wrong;
      if (!first || figures < leastRows || wrong.length < mostOfRows * figures) continue;
      if (commonest(wrong) >= mostOfWrong * wrong.length) continue;
      wrong.forEach((each) => not.add(each));
      roles.set(role, figures);
      const heading = columnOf(role)?.heading ?? "";
      instead.push({
        sheet: first.sheet,
        why: `${heading === "" ? roleOf(role).words : heading}, since it agrees with its readings in hardly any row: look at what the column is, at its unit and at the figures for all rows`,
        rows: wrong.map(({ row }) => row),
        ...doubtIn(role, heading, isAnswered),
      });
    }
    const isDoubted = ({ byDose }: Finding): boolean =>
      byDose !== undefined && roles.has(byDose.role);
    const findings = all
      .filter((each) => !not.has(each))
      // what was weighed beside a dose that is not checked is not checked either
      .filter((each) => each.mistake !== "weighed-otherwise" || !isDoubted(each))
      .map((each) => (isDoubted(each) ? withoutItsDose(each) : each));
    return { instead, findings, roles };
  }
}
