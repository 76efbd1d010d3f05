/**
 * Lye counted in cups or spoons: in whole ones, in halves, thirds, quarters or eighths. A figure says no
 * more than one step of its column, since people count up or down to a full measure.
 */
import { isSized } from "../../../core/quantity/measures";
import type { RoleId } from "../../recognising/roles";
import { type HeldCell } from "../../recognising/sheet-cells";
import { type Commas, numberFrom } from "../../recognising/typed-number";
import { doseRoles } from "./figure-roles";

const parts = [1, 2, 3, 4, 8];

/** Thirds are typed as 0.33 or 0.67. */
const near = 0.011;
const isStep = (figure: number, of: number): boolean =>
  Math.abs(figure * of - Math.round(figure * of)) <= near * of;

const nearlyAll = 0.9;

/** May a column of this role be so counted? */
const isCounted = (role: RoleId, unit: string | undefined): boolean =>
  isSized(unit) && (role === "weighed" || doseRoles.includes(role));

/** One step, in the column's measure; undefined where its figures are finer. */
export function coarseStep(
  { role, unit }: { readonly role: RoleId; readonly unit: string | undefined },
  cells: readonly HeldCell[],
  commas: Commas,
): number | undefined {
  if (!isCounted(role, unit)) return undefined;
  const figures = cells.flatMap(({ value }) => numberFrom(value, commas)?.value ?? []);
  if (figures.length === 0) return undefined;
  const of = parts.find(
    (each) => figures.filter((figure) => isStep(figure, each)).length >= nearlyAll * figures.length,
  );
  return of === undefined ? undefined : 1 / of;
}
