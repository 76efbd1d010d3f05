/** From the verdicts on a row's figures to what a report says of it. */
import { cellName } from "../../sheet/cell-name";
import type { MappedColumn } from "../recognising/mapping";
import type { RoleId } from "../recognising/roles";
import type { CheckedFigure } from "./check-row";
import { type Effect, effectOf, lyeBy, rightLye } from "./effect";
import type { Finding } from "./finding";
import { shown } from "./formula-facts";
import { type HeldFigure, scaleOf } from "./held-figure";
import type { MistakeId } from "./mistakes";
import type { Readings } from "./readings";
import { shownLike } from "./shown-like";
import { waysOf } from "./slips";
import type { Ways } from "./ways";
import { fromNothing } from "./worked";
import { parts } from "./worked-out";

/** Weighing to the nearest division of a kitchen balance is no mistake. */
const weighedTolerance = 0.03;

const isWithin = (value: number, of: number, share: number): boolean =>
  Math.abs(value - of) <= Math.abs(of) * share;

const doses: readonly RoleId[] = ["catalyst", "catalystRate", "acidDose"];

const idsOf = ({ verdict }: Pick<CheckedFigure, "verdict">): readonly MistakeId[] =>
  verdict.kind === "wrong" ? (verdict.slip?.ids ?? ["not-recognised"]) : [];

function effect(
  readings: Readings,
  wrong: number | undefined,
  right: number | undefined,
): Effect | undefined {
  return wrong === undefined || right === undefined ? undefined : effectOf(readings, wrong - right);
}

const middle = (numbers: readonly number[]): number | undefined =>
  [...numbers].sort((one, other) => one - other)[Math.floor((numbers.length - 1) / 2)];

/** A maker's own constants take a dose no further than this from ours. */
const ownConstants = 0.02;

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
      const dose = this.finalLye(readings, figures);
      const right = this.rightDose(readings);
      if (dose === undefined || right === undefined) return [];
      return Math.abs(dose / right - 1) <= ownConstants ? [dose / right] : [];
    });
    this.makersShare = middle(shares) ?? 1;
  }

  in(readings: Readings, figures: readonly CheckedFigure[]): Finding[] {
    const wrong = figures.filter(({ verdict }) => verdict.kind === "wrong");
    const dose = this.finalLye(readings, figures);
    const causes = new Set(wrong.map((each) => idsOf(each).join()));
    const found = wrong.flatMap((each) => this.ofFigure(readings, each, dose, causes.size === 1));
    return [
      ...found,
      ...(found.length > 0 ? [] : this.fromLot(readings, figures, dose)),
      ...this.weighedOtherwise(readings, figures),
    ];
  }

  private ofFigure(
    readings: Readings,
    { figure, facts, verdict }: CheckedFigure,
    dose: number | undefined,
    isAlone: boolean,
  ): Finding[] {
    if (verdict.kind !== "wrong") return [];
    const { slip, should } = verdict;
    const ids = idsOf({ verdict });
    // One cause, or none that is known: what the row's own dose is off. Of several, each by itself.
    const own = isAlone || !slip ? effect(readings, dose, this.rightDose(readings)) : undefined;
    return ids.map((mistake) => ({
      ...this.place(readings, figure),
      mistake,
      should: this.shownIn(figure, should),
      formula: slip && shown({ ...slip, ids: [mistake] }, facts) > 0 ? figure.formula : "",
      effect: own ?? (slip ? this.modelled(readings, waysOf(slip, mistake)) : undefined),
    }));
  }

  private modelled(readings: Readings, ways: Ways): Effect | undefined {
    return effect(readings, lyeBy(readings, ways), rightLye(readings));
  }

  /** The dose of a batch that rests on a wrong titration in another table. */
  private fromLot(
    readings: Readings,
    figures: readonly CheckedFigure[],
    dose: number | undefined,
  ): Finding[] {
    const mistake = readings.ofLot?.mistake;
    const carried = figures.find(
      ({ figure, verdict }) => doses.includes(figure.role) && verdict.kind === "carried",
    );
    if (!mistake || carried?.verdict.kind !== "carried") return [];
    return [
      {
        ...this.place(readings, carried.figure),
        mistake: mistake.id,
        fromRow: mistake.row + 1,
        should: this.shownIn(carried.figure, carried.verdict.should),
        formula: "",
        effect: effect(readings, dose, this.rightDose(readings)),
      },
    ];
  }

  private weighedOtherwise(readings: Readings, figures: readonly CheckedFigure[]): Finding[] {
    const weighed = readings.held.get("weighed");
    const dose = figures.find(({ figure }) => figure.role === "catalyst")?.figure;
    if (!weighed || !dose || isWithin(weighed.value, dose.value, weighedTolerance)) return [];
    const right = rightLye(readings);
    // Whoever weighed the right amount beside a wrong figure made no mistake.
    if (right !== undefined && isWithin(weighed.value, right, weighedTolerance)) return [];
    return [
      {
        ...this.place(readings, weighed),
        mistake: "weighed-otherwise",
        should: this.shownIn(weighed, dose.value),
        formula: "",
        effect: readings.amount && effect(readings, weighed.value, right),
      },
    ];
  }

  private place(readings: Readings, figure: HeldFigure) {
    const column = this.columns.get(figure.role);
    return {
      sheet: this.sheet,
      row: readings.row,
      column: figure.column,
      address: cellName(readings.row, figure.column),
      heading: column?.heading ?? "",
      role: figure.role,
      label: readings.label,
      held: figure.shown,
      unit: column?.unit ?? "",
    };
  }

  private shownIn(figure: HeldFigure, value: number): string {
    const scale = scaleOf(figure.role, this.columns.get(figure.role)?.unit, false);
    return shownLike(value / scale, figure.halfDigit / scale);
  }

  /** g of lye, as weighed, that the row ends in; undefined when it holds no dose. */
  private finalLye(readings: Readings, figures: readonly CheckedFigure[]): number | undefined {
    for (const role of doses) {
      const held = figures.find(({ figure }) => figure.role === role);
      if (!held) continue;
      const of = parts(this.columns.get(role)?.unit, readings, {}, fromNothing);
      // Grams of a batch whose oil is not known are no dose of a kilogram.
      if (of === undefined || (of === "all" && !readings.amount)) continue;
      const grams = held.figure.value * (of === "all" ? 1 : of);
      const isPure =
        role === "acidDose" &&
        held.verdict.kind !== "not-checked" &&
        held.verdict.written === "pure";
      return isPure && readings.assay !== undefined ? (grams * 100) / readings.assay : grams;
    }
    return undefined;
  }

  private rightDose(readings: Readings): number | undefined {
    const isTotal = this.columns.has("catalyst") || this.columns.has("catalystRate");
    const right = rightLye(readings, isTotal ? "catalyst" : "acidDose");
    return right === undefined ? undefined : right * this.makersShare;
  }
}
