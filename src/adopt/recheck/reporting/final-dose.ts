/** The dose that a row ends in: what is known of it, and how much lye it is. */
import type { MappedColumn } from "../../recognising/mapping";
import type { RoleId } from "../../recognising/roles";
import type { CheckedFigure } from "../judging/checked";
import type { DoseState } from "./finding";
import type { Readings } from "../reading/readings";
import { fromNothing } from "../arithmetic/row-arithmetic";
import { parts } from "../arithmetic/expected-figure";

/** The first that is held is what is weighed out. */
export const doses: readonly RoleId[] = ["catalyst", "catalystRate", "acidDose"];

export function doseState(figures: readonly CheckedFigure[]): DoseState {
  const held = doses.flatMap((role) => figures.filter(({ figure }) => figure.role === role));
  const [last] = held;
  if (!last) return "none";
  if (last.verdict.kind === "not-checked") return "unchecked";
  return last.verdict.kind === "right" ? "agrees" : "differs";
}

export interface FinalDose {
  /** The column it is held in. */
  readonly role: RoleId;
  /** Of lye, as weighed. */
  readonly grams: number;
  /** Half of the last digit in which it is held. */
  readonly half: number;
}

/** Undefined when the row holds no dose. */
export function finalDose(
  readings: Readings,
  figures: readonly CheckedFigure[],
  columns: ReadonlyMap<RoleId, MappedColumn>,
): FinalDose | undefined {
  for (const role of doses) {
    const held = figures.find(({ figure }) => figure.role === role);
    if (!held) continue;
    const of = parts(columns.get(role)?.unit, readings, {}, fromNothing);
    // Grams of a batch whose oil is not known are no dose of a kilogram.
    if (of === undefined || (of === "all" && !readings.amount)) continue;
    const isPure = held.verdict.kind !== "not-checked" && held.verdict.written === "pure";
    const scale =
      (of === "all" ? 1 : of) * (isPure && readings.assay !== undefined ? 100 / readings.assay : 1);
    const { value, halfDigit } = held.figure;
    return { role, grams: value * scale, half: halfDigit * scale };
  }
  return undefined;
}
