/** Every held result of one row: judged in the convention that is fairest to it, then searched for mistakes. */
import { columnOf, type LogbookMapping, type MappedColumn } from "../recognising/mapping";
import type { RoleId } from "../recognising/roles";
import { searched, type Verdict } from "./check-figure";
import { conventionsFor, plainConvention } from "./conventions";
import type { Finding } from "./finding";
import { type FormulaFacts, formulaReader } from "./formula-facts";
import type { HeldFigure } from "./held-figure";
import { type Judged, type Learned, order, RowJudge } from "./judge-row";
import { learnConvention, type LearnedConvention } from "./learn-convention";
import { settledAcid } from "./of-lot";
import type { Readings } from "./readings";
import { RowFindings } from "./row-findings";
import type { Slip } from "./slips";

export interface CheckedFigure {
  readonly figure: HeldFigure;
  readonly facts: FormulaFacts | undefined;
  readonly verdict: Verdict;
}

export interface CheckedRow {
  readonly readings: Readings;
  /** As the titration's own figures read them. */
  readonly titration: Readings;
  readonly figures: readonly CheckedFigure[];
  readonly findings: readonly Finding[];
}

/** Nothing that is this far off comes right by rounding: a look at the rest is spared. */
const hopeless = 20;

const isWrong = ({ verdict }: { readonly verdict: Verdict }): boolean => verdict.kind === "wrong";
const wrongs = ({ figures }: Judged): number => figures.filter(isWrong).length;

export class RowChecker {
  private learned: Learned = { usualSlips: new Map(), acidOfPureLye: true };
  private convention: LearnedConvention = { usual: plainConvention, others: [] };
  private readonly columns = new Map<RoleId, MappedColumn>();
  private readonly judge: RowJudge;
  private readonly findings: RowFindings;

  constructor(mapping: LogbookMapping) {
    for (const role of [...order, "weighed"] as const) {
      const column = columnOf(mapping, role);
      if (column) this.columns.set(role, column);
    }
    this.judge = new RowJudge(this.columns, formulaReader(mapping));
    this.findings = new RowFindings(mapping.sheet, this.columns);
  }

  /** Learns from some rows which convention a logbook keeps to, and its commonest mistakes. */
  learn(rows: readonly Readings[]): void {
    this.convention = learnConvention(rows.map(settledAcid), (row, convention) =>
      this.judge.misfits(row, convention),
    );
    const checked = rows.map((row) => this.check(row));
    this.findings.learn(checked.filter(({ findings }) => findings.length === 0));
    const acidOfPureLye = checked.some(({ figures }) =>
      figures.some(
        ({ figure: { role }, verdict }) =>
          (role === "acidValue" || role === "ffa") && verdict.kind === "right",
      ),
    );
    const counts = new Map<RoleId, Map<string, { slip: Slip; count: number }>>();
    for (const { figures } of checked) {
      for (const { figure, verdict } of figures) {
        if (verdict.kind !== "wrong" || !verdict.slip) continue;
        const ofRole = counts.get(figure.role) ?? new Map<string, { slip: Slip; count: number }>();
        const key = verdict.slip.ids.join();
        ofRole.set(key, { slip: verdict.slip, count: (ofRole.get(key)?.count ?? 0) + 1 });
        counts.set(figure.role, ofRole);
      }
    }
    const usualSlips = new Map(
      [...counts].flatMap(([role, slips]) => {
        const [first] = [...slips.values()].sort((one, other) => other.count - one.count);
        return first ? [[role, first.slip] as const] : [];
      }),
    );
    this.learned = { usualSlips, acidOfPureLye };
  }

  check(given: Readings): CheckedRow {
    const settled = settledAcid(given);
    const { readings, titration, figures } = this.fairest(settled);
    const checked = figures.map(({ checking, verdict }) => ({
      figure: checking.held,
      facts: checking.facts,
      verdict: searched(checking, verdict),
    }));
    return { readings, titration, figures: checked, findings: this.findings.in(readings, checked) };
  }

  /** In the logbook's convention, or in another in which nothing is wrong: a convention is no mistake. */
  private fairest(settled: Readings): Judged {
    const usual = this.judge.judge(settled, this.convention.usual, this.learned);
    if (wrongs(usual) === 0) return usual;
    for (const other of conventionsFor(settled, this.convention)) {
      if (this.judge.misfits(settled, other).some((each) => each > hopeless)) continue;
      const judged = this.judge.judge(settled, other, this.learned);
      if (wrongs(judged) === 0) return judged;
    }
    return usual;
  }
}
