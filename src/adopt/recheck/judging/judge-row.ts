/** A row in one convention: each figure judged, and how far all are off. */
import type { MappedColumn } from "../../recognising/mapping";
import type { RoleId } from "../../recognising/roles";
import { carriedFrom, judged, type Verdict } from "./check-figure";
import type { Checking } from "./checking";
import { type Convention, inConvention, titrationInConvention } from "../conventions/conventions";
import { coreFigures } from "../arithmetic/core-figures";
import { doseRoles, figureRoles } from "../reading/figure-roles";
import type { FormulaFacts } from "../reading/formula-facts";
import type { HeldFigure } from "../reading/held-figure";
import { isCopied, lotFigures } from "../arithmetic/of-lot";
import { once } from "../arithmetic/once";
import type { Readings } from "../reading/readings";
import type { RightFigure } from "./right-figure";
import type { Slip } from "./slips";
import { originsOf, type Upstream, upstreamOf } from "../arithmetic/upstream";
import { fromNothing, hasTitration, times } from "../arithmetic/row-arithmetic";
import { parts, expectedFigure, type Written } from "../arithmetic/expected-figure";
import { takenAs, writtensOf } from "./writtens";

const ofTitration: ReadonlySet<RoleId> = new Set(["acidValue", "ffa"]);

/** What rounding on the way may do to a figure. */
const rounding = 0.0015;

/** The acid figure that the row starts from, where it holds no titration: nothing says that it is right. */
const isGiven = (role: RoleId, r: Readings): boolean =>
  !hasTitration(r) &&
  !r.ofLot &&
  (role === "acidValue" || (role === "ffa" && !r.held.has("acidValue")));

/** A % FFA, or an acid value, that a row starts from is read to a tenth or two: 2 is no 1.5, whatever else the column
 * holds. Common practice, no source. */
const coarsest: Readonly<Partial<Record<RoleId, number>>> = { ffa: 0.05, acidValue: 0.1 };
const asGiven = (held: HeldFigure): HeldFigure => ({
  ...held,
  halfDigit: Math.min(held.halfDigit, coarsest[held.role] ?? held.halfDigit),
});

/** Without a search for mistakes: a figure that was copied from where it is wrong is not wrong by itself. */
function verdictOn(checking: Checking, row: Readings): Verdict {
  if (isGiven(checking.role, checking.readings)) return { kind: "not-checked" };
  const own = judged(checking);
  return own.kind === "wrong" && isCopied(checking.held, row) ? carriedFrom(own) : own;
}

/** The search for mistakes is still to come. */
export interface Judged {
  readonly readings: Readings;
  /** As the titration's own figures read them. */
  readonly titration: Readings;
  readonly figures: readonly { readonly checking: Checking; readonly verdict: Verdict }[];
}

/** What rows all over the logbook told. */
export interface Learned {
  readonly usualSlips: ReadonlyMap<RoleId, Slip>;
  readonly acidOfPureLye: boolean;
  /** Figures that it keeps to their digits. */
  readonly exact: ReadonlySet<RoleId>;
  /** How a part of a dose is written down in nearly all rows; asked for where a row fits otherwise by chance. */
  readonly written: ReadonlyMap<RoleId, Written>;
}

export const nothingLearned: Learned = {
  usualSlips: new Map(),
  acidOfPureLye: true,
  exact: new Set(),
  written: new Map(),
};

/** A row as it reads in a convention: for the doses, and for what the titration alone gives. */
interface InConvention {
  readonly dose: Readings;
  readonly titration: Readings;
  readonly core: (role: RoleId) => number | undefined;
  readonly coreOfTitration: (role: RoleId) => number | undefined;
}

export class RowJudge {
  constructor(
    private readonly columns: ReadonlyMap<RoleId, MappedColumn>,
    private readonly factsOf: (text: string, row: number) => FormulaFacts | undefined,
  ) {}

  /** @param writtens what is known of how parts of a dose are written down */
  judge(
    row: Readings,
    convention: Convention,
    learned: Learned,
    writtens: Learned["written"] = nothingLearned.written,
  ): Judged {
    const read = this.read(row, convention);
    const figures: { checking: Checking; verdict: Verdict }[] = [];
    const right: RightFigure[] = [];
    const upstream: Upstream[] = lotFigures(read.dose);
    for (const role of figureRoles) {
      const held = row.held.get(role);
      if (!held) continue;
      const checking = this.checking(held, read, [...upstream], [...right], {
        ...learned,
        written: writtens,
      });
      const verdict = verdictOn(checking, row);
      figures.push({ checking, verdict });
      const written =
        verdict.kind === "not-checked" ? takenAs(this.columns, role) : verdict.written;
      const isWrong = verdict.kind === "wrong";
      const { value, halfDigit } = held;
      if (verdict.kind === "right")
        right.push({ role, value, halfDigit, unit: checking.unit, written });
      const start = isGiven(role, row) ? asGiven(held) : held;
      const next = upstreamOf(start, checking.unit, written, isWrong, read.dose);
      if (next) upstream.push(next);
    }
    return { readings: read.dose, titration: read.titration, figures };
  }

  /** How far each figure is from what the readings alone give, in parts of its digits and a little rounding.
   * @param most the rest is not looked at where one is further off */
  misfits(row: Readings, convention: Convention, most = Infinity): ReadonlyMap<RoleId, number> {
    const dose = inConvention(row, convention);
    const titration = once(() => titrationInConvention(row, convention));
    const found = new Map<RoleId, number>();
    for (const [role, held] of row.held) {
      if (role === "weighed" || isGiven(role, row)) continue;
      if (row.assayCancels && ofTitration.has(role)) continue;
      const readings = ofTitration.has(role) ? titration() : dose;
      const unit = this.columns.get(role)?.unit;
      for (const written of writtensOf(this.columns, role, readings)) {
        const value = expectedFigure(role, unit, written, readings, {}, fromNothing);
        if (value === undefined) continue;
        const off = Math.abs(held.value - value) / (held.halfDigit + rounding * Math.abs(value));
        found.set(role, Math.min(off, found.get(role) ?? Infinity));
      }
      if ((found.get(role) ?? 0) > most) return found;
    }
    return found;
  }

  private read(row: Readings, convention: Convention): InConvention {
    const dose = inConvention(row, convention);
    const titration = titrationInConvention(row, convention);
    return { dose, titration, core: coreFigures(dose), coreOfTitration: coreFigures(titration) };
  }

  private checking(
    held: HeldFigure,
    { dose, titration, core, coreOfTitration }: InConvention,
    before: readonly Upstream[],
    right: readonly RightFigure[],
    { usualSlips, acidOfPureLye, exact, written }: Learned,
  ): Checking {
    const { role } = held;
    const unit = this.columns.get(role)?.unit;
    const facts = this.factsOf(held.formula, dose.row);
    const isAcid = ofTitration.has(role);
    const usual = written.get(role);
    const writtens = usual ? [usual] : writtensOf(this.columns, role, dose);
    const isPure = writtens.every((each) => each === "pure");
    return {
      role,
      unit,
      held,
      readings: isAcid ? titration : dose,
      core: () => {
        const figure = this.coreIn(role, isAcid ? coreOfTitration : core, unit, dose);
        return isPure ? times(figure, (dose.assay ?? 100) / 100) : figure;
      },
      origins: once(() => originsOf(role, before, facts)),
      right,
      facts,
      writtens,
      usualSlip: usualSlips.get(role),
      isExact: exact.has(role),
      acidOfPureLye,
    };
  }

  /** The core's figure; a dose for a litre or a kilogram where the column is in that. */
  private coreIn(
    role: RoleId,
    core: (role: RoleId) => number | undefined,
    unit: string | undefined,
    readings: Readings,
  ): number | undefined {
    const figure = core(role === "catalystRate" ? "catalyst" : role);
    if (figure === undefined || !doseRoles.includes(role)) return figure;
    const of = parts(unit, readings, {}, fromNothing);
    return of === "all" ? figure : of === undefined ? undefined : figure / of;
  }
}
