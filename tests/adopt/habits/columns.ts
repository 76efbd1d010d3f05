/** The columns that a habit writes down, with what each is in the words of the pane's lists. */
import type { RoleId } from "../../../src/adopt/recognising/roles";
import type { Habit } from "./habit";

export type Key =
  | "date"
  | "batch"
  | "lot"
  | "titrantBase"
  | "strength"
  | "sample"
  | `sample ${number}`
  | `titre ${number}`
  | "blank"
  | "blank 2"
  | "mean"
  | "net"
  | "acidValue"
  | "ffa"
  | "oil"
  | "unit"
  | "density"
  | "temperature"
  | "kilograms"
  | "base"
  | "assay"
  | "charge"
  | "acid"
  | "reaction"
  | "rate"
  | "total"
  | "weighed"
  | "methanol"
  | "note";

export interface Column {
  readonly key: Key;
  readonly heading: string;
  readonly role: RoleId;
  readonly unit?: string;
  readonly format: string;
  /** Digits after the point that the maker keeps. */
  readonly digits: number;
}

export const column = (
  key: Key,
  heading: string,
  role: RoleId,
  unit?: string,
  digits = 2,
  format = "General",
): Column => ({
  key,
  heading,
  role,
  digits,
  format,
  ...(unit === undefined ? {} : { unit }),
});
export const when = (condition: boolean, ...columns: Column[]): Column[] =>
  condition ? columns : [];

export const strengthRole = ({
  titrant,
}: Habit): { role: RoleId; unit: string; heading: string } =>
  titrant.unit === "mol/L"
    ? { role: "molarity", unit: "mol/L", heading: "Titrant mol/L" }
    : { role: "strength", unit: titrant.unit, heading: `Titrant ${titrant.unit}` };

export const sampleRole = ({ sample }: Habit): { role: RoleId; unit: string; heading: string } =>
  sample.by === "g"
    ? { role: "sampleMass", unit: "g", heading: "Sample g" }
    : { role: "sampleVolume", unit: "mL", heading: "Sample mL" };

export const chargeUnit = ({ charge }: Habit): string =>
  charge.per === "percent format" ? "%" : charge.per;
