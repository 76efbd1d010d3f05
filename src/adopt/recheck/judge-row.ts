/** A row in one convention: each figure judged, and how far all are off. */
import type { MappedColumn } from "../recognising/mapping";
import type { RoleId } from "../recognising/roles";
import { carriedFrom, judged, type Verdict } from "./check-figure";
import type { Checking } from "./checking";
import { type Convention, inConvention, titrationInConvention } from "./conventions";
import { coreFigures } from "./core-figures";
import type { FormulaFacts } from "./formula-facts";
import { isCopied, lotFigures } from "./of-lot";
import type { Readings } from "./readings";
import type { Slip } from "./slips";
import { originsOf, type Upstream, upstreamOf } from "./upstream";
import { fromNothing, hasTitration } from "./worked";
import { parts, workedOut, type Written } from "./worked-out";

/** In the order in which one is worked out from the other. */
export const order: readonly RoleId[] = [
  "meanTitre",
  "correctedTitre",
  "acidValue",
  "ffa",
  "oilMass",
  "reactionDose",
  "acidDose",
  "catalystRate",
  "catalyst",
];

const doses: readonly RoleId[] = ["acidDose", "reactionDose", "catalystRate", "catalyst"];
const ofTitration: ReadonlySet<RoleId> = new Set(["acidValue", "ffa"]);
const isPart = (role: RoleId): boolean => role === "acidDose" || role === "reactionDose";

/** What rounding on the way may do to a figure. */
const rounding = 0.0015;

/** The acid figure that the row starts from, where it holds no titration: nothing says that it is right. */
const isGiven = (role: RoleId, r: Readings): boolean =>
  !hasTitration(r) &&
  !r.ofLot &&
  (role === "acidValue" || (role === "ffa" && !r.held.has("acidValue")));

/** Worked out when it is first asked for: a right figure never asks. */
function once<T>(work: () => T): () => T {
  let done: { readonly value: T } | undefined;
  return () => (done ??= { value: work() }).value;
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
}

export class RowJudge {
  constructor(
    private readonly columns: ReadonlyMap<RoleId, MappedColumn>,
    private readonly factsOf: (text: string, row: number) => FormulaFacts | undefined,
  ) {}

  judge(row: Readings, convention: Convention, { usualSlips, acidOfPureLye }: Learned): Judged {
    const readings = inConvention(row, convention);
    const titration = titrationInConvention(row, convention);
    const core = coreFigures(readings);
    const coreOfTitration = coreFigures(titration);
    const figures: { checking: Checking; verdict: Verdict }[] = [];
    const upstream: Upstream[] = lotFigures(readings);
    /** Wrong parts in the other way of weighing: only their mistake would tell in which they are. */
    const otherwise: Upstream[] = [];
    for (const role of order) {
      const held = readings.held.get(role);
      if (!held) continue;
      const unit = this.columns.get(role)?.unit;
      const facts = this.factsOf(held.formula, row.row);
      const isAcid = ofTitration.has(role);
      const before = [...upstream];
      const instead = otherwise.map((other) =>
        before.map((each) => (each.role === other.role ? other : each)),
      );
      const checking: Checking = {
        role,
        unit,
        held,
        readings: isAcid ? titration : readings,
        core: this.coreIn(role, isAcid ? coreOfTitration : core, unit, readings),
        origins: once(() => [before, ...instead].flatMap((each) => originsOf(role, each, facts))),
        facts,
        writtens: this.writtens(role, readings),
        usualSlip: usualSlips.get(role),
        acidOfPureLye,
      };
      const own = judged(checking);
      const verdict = isGiven(role, readings)
        ? ({ kind: "not-checked" } as const)
        : own.kind === "wrong" && isCopied(held, row)
          ? carriedFrom(own)
          : own;
      figures.push({ checking, verdict });
      const written = verdict.kind === "not-checked" ? "pure" : verdict.written;
      const next = upstreamOf(held, unit, written, readings);
      if (next) upstream.push(next);
      if (verdict.kind !== "wrong" || !isPart(role)) continue;
      const other = upstreamOf(held, unit, written === "pure" ? "weighed" : "pure", readings);
      if (other) otherwise.push(other);
    }
    return { readings, titration, figures };
  }

  /** How far each figure is from what the readings alone give, in parts of its digits and a little rounding. */
  misfits(row: Readings, convention: Convention): number[] {
    const dose = inConvention(row, convention);
    const titration = titrationInConvention(row, convention);
    return order.flatMap((role) => {
      const held = row.held.get(role);
      const isUnsure = row.assayCancels && ofTitration.has(role);
      if (!held || isUnsure) return [];
      const readings = ofTitration.has(role) ? titration : dose;
      const unit = this.columns.get(role)?.unit;
      const all = this.writtens(role, readings).flatMap((written) => {
        const value = workedOut(role, unit, written, readings, {}, fromNothing);
        if (value === undefined) return [];
        return [Math.abs(held.value - value) / (held.halfDigit + rounding * Math.abs(value))];
      });
      return all.length === 0 ? [] : [Math.min(...all)];
    });
  }

  /** The core's figure; a dose for a litre or a kilogram where the column is in that. */
  private coreIn(
    role: RoleId,
    core: ReadonlyMap<RoleId, number>,
    unit: string | undefined,
    readings: Readings,
  ): number | undefined {
    const figure = core.get(role === "catalystRate" ? "catalyst" : role);
    if (figure === undefined || !doses.includes(role)) return figure;
    const of = parts(unit, readings, {}, fromNothing);
    return of === "all" ? figure : of === undefined ? undefined : figure / of;
  }

  /** A part of a dose is written down pure or as weighed where a total shows which. */
  private writtens(role: RoleId, { assay }: Readings): Written[] {
    const hasTotal =
      this.columns.has("catalyst") ||
      this.columns.has("catalystRate") ||
      this.columns.has("weighed");
    return isPart(role) && (hasTotal || assay === undefined) ? ["weighed", "pure"] : ["weighed"];
  }
}
