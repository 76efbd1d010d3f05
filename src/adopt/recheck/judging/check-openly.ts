/**
 * A row judged with each answer to what nobody said: right where it fits with one of them. Of a wrong
 * one only that is told on which all agree.
 */
import type { LogbookMapping } from "../../recognising/mapping";
import { answered, type Answers, answersFor } from "../conventions/basis-answers";
import type { Convention } from "../conventions/conventions";
import type { Lots } from "../lots";
import type { Readings } from "../reading/readings";
import { isSame } from "../reporting/effect";
import type { Finding } from "../reporting/finding";
import { RowChecker } from "./check-row";
import type { CheckedRow } from "./checked";

interface Answer {
  readonly answers: Answers;
  readonly checker: RowChecker;
  /** Which of the rows learned from come out right with it. */
  readonly right: ReadonlySet<number>;
}

/** What each answer says of the same cell, for a finding of the first. */
function together(finding: Finding, others: readonly CheckedRow[]): Finding {
  const same = others.map(({ findings }) =>
    findings.find(({ column }) => column === finding.column),
  );
  const should = new Set([finding, ...same].flatMap((each) => each?.should ?? []));
  return {
    ...finding,
    should: [...should].join(" or "),
    effect: same.every((each) => isSame(finding.effect, each?.effect)) ? finding.effect : undefined,
    ...(finding.byDose && others.length > 0
      ? { byDose: { role: finding.byDose.role, worked: undefined } }
      : {}),
  };
}

/** What follows from another table is no mistake of this row. */
const ownIn = ({ findings }: CheckedRow): number =>
  findings.filter(({ fromRow }) => fromRow === undefined).length;
/** The answer that leaves least wrong tells what is wrong. */
const leastWrong = (one: CheckedRow, other: CheckedRow): number =>
  ownIn(one) - ownIn(other) || one.findings.length - other.findings.length;

/** So many rows that are right with one answer alone rule out another that no row speaks for. */
const enough = 4;

const beyond = (one: Answer, other: Answer): number =>
  [...one.right].filter((row) => !other.right.has(row)).length;
const isRuledOut = (answer: Answer, all: readonly Answer[]): boolean =>
  all.some((other) => beyond(other, answer) >= enough && beyond(answer, other) === 0);

export class OpenChecker {
  private checkers: readonly Answer[] = [];

  constructor(
    private readonly mapping: LogbookMapping,
    private readonly lots: Lots,
  ) {}

  /** How the logbook is kept, with the answer that more of its rows fit. */
  get usual(): Convention | undefined {
    return this.checkers[0]?.checker.usual;
  }

  /** Answers that the rows are read with. */
  get answers(): readonly Answers[] {
    return this.checkers.map(({ answers }) => answers);
  }

  learn(rows: readonly Readings[]): void {
    const all = answersFor(rows).map((answers) => {
      const checker = new RowChecker(this.mapping, this.lots);
      return { answers, checker, right: checker.learn(rows.map((row) => answered(row, answers))) };
    });
    this.checkers = all
      .filter((each) => !isRuledOut(each, all))
      .sort((one, other) => other.right.size - one.right.size);
  }

  check(row: Readings): CheckedRow {
    const wrong: CheckedRow[] = [];
    for (const { answers, checker } of this.checkers) {
      const checked = checker.check(answered(row, answers));
      if (checked.findings.length === 0) return { ...checked, acidValues: this.acidValues(row) };
      wrong.push(checked);
    }
    const [first, ...others] = [...wrong].sort(leastWrong);
    if (!first) throw new Error("a row is checked before anything is learned");
    return {
      ...first,
      acidValues: this.acidValues(row),
      findings: first.findings.map((each) => together(each, others)),
    };
  }

  /** What the row's titration comes to with each answer. */
  private acidValues(row: Readings): readonly number[] {
    if (this.checkers.length < 2 || row.lot === "") return [];
    const all = this.checkers.flatMap(
      ({ answers, checker }) => checker.acidValue(answered(row, answers)) ?? [],
    );
    return [...new Set(all)];
  }
}
