/** What a figure that is typed for a whole logbook may be: one outside is kept, said to be wrong, and not used. */
import { exact } from "../../core/exact/exact";
import { limits, type Limits, misses } from "../../core/reference/limits";
import type { MappedConstant } from "./shape";
import { type RoleId, roleOf } from "./roles";
import { typedFigure } from "./typed-number";

const chargePercent: Limits = {
  ...limits.baseCharge,
  ifAbove: "is it g for a litre of oil? 7 g/L is 0.77 %",
};
const percentSolution: Limits = { ...limits.titrantStrength, unit: "%", to: "20" };
const inUnits: Readonly<Partial<Record<RoleId, Readonly<Record<string, Limits>>>>> = {
  molarity: { "mol/L": limits.molarity },
  strength: { "g/L": limits.titrantStrength, "% w/v": percentSolution },
  baseCharge: { "%": chargePercent, "g/L": limits.chargeGramsPerLitre },
  assay: { "%": limits.assay },
  sampleMass: { g: limits.sampleMass },
  sampleVolume: { mL: limits.sampleVolume },
};

export const limitOf = (role: RoleId, unit: string | undefined): Limits | undefined =>
  inUnits[role]?.[unit ?? ""];

/** The figure that a typed text is for its role; undefined for none, or for one outside its limits. */
function typedValue({ role, unit, from }: MappedConstant): number | undefined {
  const value = from.kind === "typed" ? typedFigure(from.value) : undefined;
  const limit = limitOf(role, unit);
  const misfits = value !== undefined && limit && misses(exact(value), limit) !== undefined;
  return misfits ? undefined : value;
}

/** Can it be worked with? Words always can; figures when they are some. */
export const isUsable = (constant: MappedConstant): boolean =>
  constant.from.kind === "cell" ||
  roleOf(constant.role).holds !== "number" ||
  typedValue(constant) !== undefined;
