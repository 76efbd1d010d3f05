/** From the verdicts on a row's figures to what a report says of it. */
import { cellName } from "../../../sheet/cell-name";
import type { MappedColumn } from "../../recognising/mapping";
import type { RoleId } from "../../recognising/roles";
import type { CheckedFigure } from "../judging/checked";
import { agreed, type Effect, effectOf, lyeBy, rightLye } from "./effect";
import { basesOf } from "./bases-of";
import type { DoseState, Finding } from "./finding";
import { doses, doseState, type FinalDose, finalDose } from "./final-dose";
import { type HeldFigure, scaleOf, shownIn } from "../reading/held-figure";
import type { WrongLot } from "../lots";
import type { Readings } from "../reading/readings";
import { weighedTolerance } from "../reading/weighed-alone";
import { withSharedEffect } from "./shared-effect";
import { shownLike } from "./shown-like";
import { idsOf, shown, type Slip } from "../judging/slips";

const isAbout = ({ value, halfDigit, isCoarse }: HeldFigure, of: number): boolean =>
  Math.abs(value - of) <= Math.max(Math.abs(of) * weighedTolerance, isCoarse ? halfDigit : 0);

function effect(
  readings: Readings,
  wrong: number | undefined,
  right: number | undefined,
): Effect | undefined {
  return wrong === undefined || right === undefined ? undefined : effectOf(readings, wrong - right);
}

const middle = (numbers: readonly number[]): number | undefined =>
  [...numbers].sort((one, other) => one - other)[Math.floor((numbers.length - 1) / 2)];

/** A maker's own constants (56.1, 282.5) take a dose no further than this from ours. */
const ownConstants = 0.006;

export class RowFindings {
  /** This maker's right doses beside ours: 56.1 for 56.1053 and the like. */
  private makersShare = 1;

  constructor(
    private readonly sheet: string,
    private readonly columns: ReadonlyMap<RoleId, MappedColumn>,
  ) {}

  /** Learns from rows in which nothing is wrong. */
  learn(rows: readonly { readings: Readings; figures: readonly CheckedFigure[] }[]): void {
    const shares = rows.flatMap(({ readings, figures }) => {
      if (doseState(figures) !== "agrees") return [];
      const dose = finalDose(readings, figures, this.columns);
      const right = this.rightDose(readings);
      if (dose === undefined || right === undefined) return [];
      return Math.abs(dose.grams / right - 1) <= ownConstants ? [dose.grams / right] : [];
    });
    this.makersShare = middle(shares) ?? 1;
  }

  /** @param lot what is wrong with the titration that the row starts from */
  in(
    readings: Readings,
    figures: readonly CheckedFigure[],
    lot: WrongLot | undefined,
  ): readonly Finding[] {
    const wrong = figures.filter(({ verdict }) => verdict.kind === "wrong");
    const found = wrong.flatMap((each) => this.ofFigure(readings, each, figures));
    const all = [
      ...found,
      ...(found.length > 0 || !lot ? [] : this.fromLot(readings, figures, lot)),
      ...this.weighedOtherwise(readings, figures),
    ];
    if (all.length < 2) return all;
    return withSharedEffect(all, {
      readings,
      figures,
      columns: this.columns,
      right: this.rightDose(readings),
      makersShare: this.makersShare,
    });
  }

  private ofFigure(
    readings: Readings,
    { figure, facts, verdict }: CheckedFigure,
    figures: readonly CheckedFigure[],
  ): Finding[] {
    if (verdict.kind !== "wrong") return [];
    const { slip, should, orElse } = verdict;
    const [mistake = "not-recognised", also] = slip ? idsOf(slip) : [];
    const state = doseState(figures);
    const isOwn = state === "agrees" || state === "differs";
    const dose = finalDose(readings, figures, this.columns);
    const worked = slip && agreed([slip, ...orElse].map((each) => this.modelled(readings, each)));
    return [
      {
        ...this.place(readings, figure, state),
        mistake,
        ...(also === undefined ? {} : { also }),
        ...(orElse.length === 0 ? {} : { orElse: orElse.map(idsOf) }),
        ...basesOf(slip, readings),
        should: this.shownIn(figure, should),
        formula: slip && shown(slip, facts) > 0 ? figure.formula : "",
        effect: isOwn ? this.ownEffect(readings, dose, worked) : worked,
        ...(dose ? { byDose: { role: dose.role, worked } } : {}),
      },
    ];
  }

  /** What the held dose is off; worked out to more digits than it is written in, where the mistake is known. */
  private ownEffect(
    readings: Readings,
    dose: FinalDose | undefined,
    worked: Effect | undefined,
  ): Effect | undefined {
    const held = effect(readings, dose?.grams, this.rightDose(readings));
    if (!held || !dose) return worked;
    const isSame =
      worked && Math.abs(worked.grams - held.grams) <= dose.half + 0.002 * Math.abs(held.grams);
    return isSame ? worked : held;
  }

  private modelled(readings: Readings, { ways }: Slip): Effect | undefined {
    if (!readings.base || readings.assay === undefined || ways.result) return undefined;
    return effect(readings, lyeBy(readings, ways), rightLye(readings));
  }

  /** The dose of a batch that rests on a wrong titration in another table. */
  private fromLot(
    readings: Readings,
    figures: readonly CheckedFigure[],
    { mistake, orElse, row }: WrongLot,
  ): Finding[] {
    const carried = figures.find(
      ({ figure, verdict }) => doses.includes(figure.role) && verdict.kind === "carried",
    );
    if (carried?.verdict.kind !== "carried") return [];
    const dose = finalDose(readings, figures, this.columns);
    return [
      {
        ...this.place(readings, carried.figure, doseState(figures)),
        mistake,
        orElse,
        fromRow: row + 1,
        should: this.shownIn(carried.figure, carried.verdict.should),
        formula: "",
        effect: effect(readings, dose?.grams, this.rightDose(readings)),
        ...(dose ? { byDose: { role: dose.role, worked: undefined } } : {}),
      },
    ];
  }

  private weighedOtherwise(readings: Readings, figures: readonly CheckedFigure[]): Finding[] {
    const weighed = readings.held.get("weighed");
    const worked =
      figures.find(({ figure }) => figure.role === "catalyst") ??
      figures.find(({ figure }) => figure.role === "catalystRate");
    const dose = worked && finalDose(readings, figures, this.columns);
    if (!weighed || !dose || isAbout(weighed, dose.grams)) return [];
    const isWorked = worked?.verdict.kind !== "not-checked";
    const right = isWorked ? rightLye(readings) : undefined;
    // Whoever weighed the right amount beside a wrong figure made no mistake.
    if (right !== undefined && isAbout(weighed, right)) return [];
    return [
      {
        ...this.place(readings, weighed, doseState(figures)),
        mistake: "weighed-otherwise",
        should: this.shownIn(weighed, dose.grams),
        formula: "",
        effect: readings.amount && effect(readings, weighed.value, right),
        byDose: { role: dose.role, worked: undefined },
      },
    ];
  }

  private place(readings: Readings, figure: HeldFigure, dose: DoseState) {
    const column = this.columns.get(figure.role);
    return {
      sheet: this.sheet,
      row: readings.row,
      column: figure.column,
      address: cellName(readings.row, figure.column),
      heading: column?.heading ?? "",
      role: figure.role,
      label: readings.label,
      held: shownIn(figure.cell, figure.typed),
      dose,
      unit: column?.unit ?? "",
    };
  }

  private shownIn(figure: HeldFigure, value: number): string {
    const column = this.columns.get(figure.role);
    const scale = scaleOf(column ?? { role: figure.role, unit: undefined }, false);
    return shownLike(value / scale, figure.halfDigit / scale);
  }

  private rightDose(readings: Readings): number | undefined {
    const isTotal = this.columns.has("catalyst") || this.columns.has("catalystRate");
    const right = rightLye(readings, isTotal ? "catalyst" : "acidDose");
    return right === undefined ? undefined : right * this.makersShare;
  }
}
