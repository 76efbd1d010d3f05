/** Every held result of one row: judged in the convention that is fairest to it, then searched for mistakes. */
import { columnOf, type LogbookMapping, type MappedColumn } from "../../recognising/mapping";
import type { RoleId } from "../../recognising/roles";
import { searched, type Verdict } from "./check-figure";
import type { CheckedFigure, CheckedRow } from "./checked";
import type { Checking } from "./checking";
import {
  type Convention,
  conventionsFor,
  plainConvention,
  titrationInConvention,
} from "../conventions/conventions";
import { explained } from "./explained";
import { formulaReader } from "../reading/formula-facts";
import { exactIn, usualSlipsOf, usualWritten } from "../conventions/habits-of-rows";
import { type Judged, nothingLearned, RowJudge } from "./judge-row";
import { figureRoles, heldRoles } from "../reading/figure-roles";
import { learnConvention, type LearnedConvention } from "../conventions/learn-convention";
import type { Lots } from "../lots";
import { isCopy } from "./match";
import { settledAcid } from "../arithmetic/of-lot";
import type { Readings } from "../reading/readings";
import { RowFindings } from "../reporting/row-findings";
import { acidValue, fromNothing } from "../arithmetic/row-arithmetic";
import { idsOf, keyOf } from "./slips";

interface Searched {
  readonly readings: Readings;
  readonly titration: Readings;
  readonly figures: readonly CheckedFigure[];
}

const figuresOf = (
  { readings, titration, figures }: Judged,
  verdictOf: (checking: Checking, verdict: Verdict) => Verdict,
): Searched => ({
  readings,
  titration,
  figures: figures.map(({ checking, verdict }) => ({
    figure: checking.held,
    facts: checking.facts,
    verdict: verdictOf(checking, verdict),
  })),
});
const withSearch = (judged: Judged): Searched => figuresOf(judged, searched);
const plainly = (judged: Judged): Searched => figuresOf(judged, (_, verdict) => verdict);

const restOnLye: ReadonlySet<RoleId> = new Set(figureRoles.slice(figureRoles.indexOf("acidValue")));

/** Nothing that is this far off comes right by rounding: a look at the rest is spared. */
const hopeless = 20;

const isWrong = ({ verdict }: { readonly verdict: Verdict }): boolean => verdict.kind === "wrong";
const wrongs = ({ figures }: Judged): number => figures.filter(isWrong).length;

const isExplained = ({ verdict }: CheckedFigure): boolean =>
  verdict.kind === "wrong" && verdict.slip?.made.length === 1;

/** Parts that add up to something else are no explanation where a mistake in one of them is. */
const isAllExplained = ({ figures }: Searched): boolean =>
  figures.every((each) => !isWrong(each) || (isExplained(each) && !isAddedWrongly(each)));
const isAddedWrongly = ({ verdict }: CheckedFigure): boolean =>
  verdict.kind === "wrong" &&
  verdict.slip !== undefined &&
  idsOf(verdict.slip).includes("slip-of-addition");
const better = (one: Searched, other: Searched): Searched => (isAllExplained(one) ? one : other);

/** All that rests on the lye is right, and something does. */
function isRight({ figures, findings }: CheckedRow): boolean {
  const onLye = figures.filter(({ figure: { role } }) => restOnLye.has(role));
  return (
    findings.length === 0 &&
    onLye.some(({ verdict }) => verdict.kind === "right") &&
    !onLye.some(({ verdict }) => verdict.kind === "carried")
  );
}

export class RowChecker {
  private learned = nothingLearned;
  private convention: LearnedConvention = { usual: plainConvention, others: [] };
  private readonly columns = new Map<RoleId, MappedColumn>();
  private readonly judge: RowJudge;
  private readonly findings: RowFindings;

  constructor(
    mapping: LogbookMapping,
    private readonly lots: Lots,
  ) {
    for (const role of heldRoles) {
      const column = columnOf(mapping, role);
      if (column) this.columns.set(role, column);
    }
    this.judge = new RowJudge(this.columns, formulaReader(mapping));
    this.findings = new RowFindings(mapping.sheet, this.columns);
  }

  /** How the logbook is kept, as far as its rows tell. */
  get usual(): Convention {
    return this.convention.usual;
  }

  /** Learns from some rows which convention a logbook keeps to, and its commonest mistakes.
   * @returns which of them are right, by row */
  learn(rows: readonly Readings[]): ReadonlySet<number> {
    const settled = rows.map(settledAcid);
    this.convention = learnConvention(settled, {
      misfits: (row, convention) => [...this.judge.misfits(row, convention).values()],
      mistakeIn: (row, convention) => this.mistakeIn(row, convention),
    });
    const checked = rows.map((row) => this.check(row));
    this.findings.learn(checked.filter(({ findings }) => findings.length === 0));
    this.learned = {
      usualSlips: usualSlipsOf(checked.flatMap(({ figures }) => figures)),
      acidOfPureLye: checked.some(({ figures }) =>
        figures.some(
          ({ figure: { role }, verdict }) =>
            (role === "acidValue" || role === "ffa") && verdict.kind === "right",
        ),
      ),
      exact: exactIn(
        settled.map((row) => this.judge.misfits(row, this.convention.usual)),
        checked,
      ),
      written: usualWritten(checked),
    };
    return new Set(checked.filter(isRight).map(({ readings: { row } }) => row));
  }

  /** What the titration of a row should come to, in the logbook's convention. */
  acidValue(row: Readings): number | undefined {
    return acidValue(titrationInConvention(row, this.convention.usual), {}, fromNothing);
  }

  check(given: Readings): CheckedRow {
    const settled = settledAcid(given);
    const { readings, titration, figures } = this.fairest(settled);
    const wrong = this.lots.wrong(settled.ofLot);
    return {
      readings,
      titration,
      figures,
      findings: this.findings.in(readings, figures, wrong),
    };
  }

  /** In the logbook's convention, or in another in which nothing is wrong: a convention is no mistake. */
  private fairest(settled: Readings): Searched {
    const usual = this.judge.judge(settled, this.convention.usual, this.learned);
    if (wrongs(usual) === 0) return plainly(usual);
    const asWritten = this.asUsuallyWritten(settled);
    if (asWritten && wrongs(asWritten) === 0) return plainly(asWritten);
    const plain = withSearch(usual);
    const found =
      asWritten && !isAllExplained(plain) && wrongs(asWritten) <= wrongs(usual)
        ? better(withSearch(asWritten), plain)
        : plain;
    // A mistake that gives the figures to their digits, in a logbook that keeps to them, is no convention.
    const isPlain = found.figures.every(
      (each) =>
        each.verdict.kind !== "wrong" ||
        (isExplained(each) && this.learned.exact.has(each.figure.role)),
    );
    if (isPlain) return found;
    for (const other of conventionsFor(settled, this.convention)) {
      const misfits = this.judge.misfits(settled, other, hopeless);
      if ([...misfits.values()].some((each) => each > hopeless)) continue;
      const judged = this.judge.judge(settled, other, this.learned);
      if (wrongs(judged) === 0) return plainly(judged);
    }
    return found;
  }

  /** With parts of a dose pure, or as weighed, as they are in nearly all rows. */
  private asUsuallyWritten(settled: Readings): Judged | undefined {
    const { learned, convention, judge } = this;
    if (learned.written.size === 0) return undefined;
    return judge.judge(settled, convention.usual, learned, learned.written);
  }

  /** The one mistake that gives all wrong figures of a row to their digits; "" where nothing is wrong. What
   * is the same as above is no mistake that rows share: a charge for a litre is the same all the way down. */
  private mistakeIn(row: Readings, convention: Convention): string | undefined {
    const judged = this.judge.judge(row, convention, nothingLearned);
    const keys = new Set<string>();
    for (const { checking, verdict } of judged.figures) {
      if (verdict.kind !== "wrong") continue;
      const match = verdict.slip ? undefined : explained(checking);
      const slip = verdict.slip ?? (match?.off === 0 ? match.slip : undefined);
      if (!slip || isCopy({ slip })) return undefined;
      keys.add(keyOf(slip));
    }
    return keys.size > 1 ? undefined : ([...keys][0] ?? "");
  }
}
