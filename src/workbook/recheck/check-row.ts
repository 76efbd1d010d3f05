/** Every held result of one row, in the order in which one is worked out from the other. */
import { columnOf, type LogbookMapping, type MappedColumn } from "../recognising/mapping";
import type { RoleId } from "../recognising/roles";
import { checkFigure, isAcid, type Verdict } from "./check-figure";
import { freshMemory, type Habits, type Memory } from "./checking";
import { coreFigures } from "./core-figures";
import type { Finding } from "./finding";
import { type FormulaFacts, formulaReader } from "./formula-facts";
import type { HeldFigure } from "./held-figure";
import { lotFigures, settledAcid } from "./of-lot";
import type { Readings } from "./readings";
import { RowFindings } from "./row-findings";
import { originsOf, type Upstream, upstreamOf } from "./upstream";
import { fromNothing } from "./worked";
import { parts, type Written } from "./worked-out";

const order: readonly RoleId[] = [
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

export interface CheckedFigure {
  readonly figure: HeldFigure;
  readonly facts: FormulaFacts | undefined;
  readonly verdict: Verdict;
}

export interface CheckedRow {
  readonly readings: Readings;
  readonly figures: readonly CheckedFigure[];
  readonly findings: readonly Finding[];
}

const doses: readonly RoleId[] = ["acidDose", "reactionDose", "catalystRate", "catalyst"];

const isPart = (role: RoleId): boolean => role === "acidDose" || role === "reactionDose";

/** Worked out when it is first asked for: a right figure never asks. */
function once<T>(work: () => T): () => T {
  let done: { readonly value: T } | undefined;
  return () => (done ??= { value: work() }).value;
}

export class RowChecker {
  private readonly memories = new Map<RoleId, Memory>(order.map((role) => [role, freshMemory()]));
  private readonly columns = new Map<RoleId, MappedColumn>();
  private readonly factsOf: (text: string, row: number) => FormulaFacts | undefined;
  private readonly findings: RowFindings;
  private habits: Habits = {
    strengthAsWeighed: true,
    chargeAsWeighed: true,
    acidOfPureLye: true,
  };

  constructor(mapping: LogbookMapping) {
    this.factsOf = formulaReader(mapping);
    for (const role of [...order, "weighed"] as const) {
      const column = columnOf(mapping, role);
      if (column) this.columns.set(role, column);
    }
    this.findings = new RowFindings(mapping.sheet, this.columns);
  }

  /**
   * Learns from some rows which ways a logbook keeps to. A way counts when more figures are right by it
   * alone than by the plain way; else a figure that agrees with it does so by chance.
   */
  learn(rows: readonly Readings[]): void {
    const count = { plain: 0, strengthAsWeighed: 0, chargeAsWeighed: 0, ofPureLye: 0 };
    const relevant: readonly RoleId[] = [
      "acidValue",
      "ffa",
      "acidDose",
      "catalystRate",
      "catalyst",
    ];
    for (const row of rows) {
      for (const { figure, verdict } of this.check(row).figures) {
        if (verdict.kind !== "right" || !relevant.includes(figure.role)) continue;
        const { strengthAsWeighed, chargeAsWeighed } = verdict.way;
        if (isAcid(figure.role)) count.ofPureLye += 1;
        if (strengthAsWeighed) count.strengthAsWeighed += 1;
        else if (chargeAsWeighed) count.chargeAsWeighed += 1;
        else count.plain += 1;
      }
    }
    // A charge touches the total alone, one figure of several in a row.
    this.habits = {
      strengthAsWeighed: count.strengthAsWeighed >= count.plain / 2 && count.strengthAsWeighed > 0,
      chargeAsWeighed: count.chargeAsWeighed >= count.plain / 3 && count.chargeAsWeighed > 0,
      acidOfPureLye: count.ofPureLye > 0,
    };
    this.memories.forEach((memory) => Object.assign(memory, freshMemory()));
  }

  check(given: Readings): CheckedRow {
    const readings = settledAcid(given);
    const core = coreFigures(readings);
    const figures: CheckedFigure[] = [];
    const upstream: Upstream[] = lotFigures(readings);
    for (const role of order) {
      const figure = readings.held.get(role);
      if (!figure) continue;
      const unit = this.columns.get(role)?.unit;
      const facts = this.factsOf(figure.formula, readings.row);
      const verdict = checkFigure({
        role,
        unit,
        held: figure,
        readings,
        core: this.coreIn(role, core, unit, readings),
        habits: this.habits,
        origins: once(() => originsOf(role, upstream, facts)),
        facts,
        writtens: this.writtens(role, readings),
        memory: this.memories.get(role) ?? freshMemory(),
      });
      figures.push({ figure, facts, verdict });
      const written = verdict.kind === "not-checked" ? "pure" : verdict.written;
      const next = upstreamOf(figure, unit, written, readings);
      if (next) upstream.push(next);
    }
    return { readings, figures, findings: this.findings.in(readings, figures) };
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
