/** Figures that stand beside the table, above it, and those that the maker is asked for. */
import type { RoleId } from "../../../src/adopt/recognising/roles";
import { chargeUnit, sampleRole, strengthRole } from "./columns";
import type { Habit, Place } from "./habit";
import type { GivenKey } from "./sheet";

export interface Given {
  readonly key: GivenKey;
  readonly role: RoleId;
  readonly label: string;
  readonly unit: string | undefined;
  readonly value: string | number;
  readonly format: string;
  /** What the maker says of it when asked. */
  readonly is?: "pure" | "as weighed";
}

const asked = (isAsWeighed: boolean): "pure" | "as weighed" =>
  isAsWeighed ? "as weighed" : "pure";

export function givens(
  habit: Habit,
  blank: number,
): (Given & { readonly place: Place | "heading" | "nowhere" })[] {
  const { titrant, sample, density, charge } = habit;
  const strength = strengthRole(habit);
  const portion = sampleRole(habit);
  const isPercent = charge.per === "percent format";
  const unit = chargeUnit(habit);
  return [
    {
      key: "strength",
      role: strength.role,
      label: `Titrant strength ${strength.unit}`,
      unit: strength.unit,
      value: titrant.value,
      format: "General",
      place: titrant.place,
      is: asked(titrant.isAsWeighed),
    },
    {
      key: "titrantBase",
      role: "titrantBase",
      label: "In burette",
      unit: undefined,
      value: titrant.base,
      format: "General",
      place: titrant.basePlace,
    },
    {
      key: "sample",
      role: portion.role,
      label: `${portion.heading.replace(/ (?:g|mL)$/, "")} ${portion.unit}`,
      unit: portion.unit,
      value: sample.size,
      format: "General",
      place: sample.isOwn ? "column" : sample.place,
    },
    {
      key: "density",
      role: "density",
      label: "Density kg/L",
      unit: "kg/L",
      value: density.sample,
      format: "General",
      place: density.place,
    },
    {
      key: "blank",
      role: "blank",
      label: "Blank mL",
      unit: "mL",
      value: habit.blank === "neutralised" ? 0 : blank,
      format: "General",
      place:
        habit.blank === "beside"
          ? "beside"
          : habit.blank === "neutralised" && habit.reads !== "net"
            ? "asked"
            : "nowhere",
    },
    {
      key: "base",
      role: "base",
      label: "Which lye",
      unit: undefined,
      value: habit.base,
      format: "General",
      place: habit.basePlace,
    },
    {
      key: "assay",
      role: "assay",
      label: "Assay of lye %",
      unit: "%",
      value: habit.assay,
      format: "General",
      place: habit.assayPlace,
    },
    {
      key: "charge",
      role: "baseCharge",
      label: isPercent ? "Base charge" : `Base charge ${unit}`,
      unit,
      value: isPercent ? charge.value / 100 : charge.value,
      format: isPercent ? "0.0%" : "General",
      place: charge.place,
      is: asked(charge.isAsWeighed),
    },
  ];
}
