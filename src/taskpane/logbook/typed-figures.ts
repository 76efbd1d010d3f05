/**
 * Figures that are typed for a whole logbook, each with its unit and, where it is grams of lye, whether
 * they are pure. A figure without its unit is kept and not used.
 */
import type { Limits } from "../../core/reference/limits";
import { type Basis, basisOf, hasBasis } from "../../adopt/recognising/basis";
import { type LogbookMapping, withConstant } from "../../adopt/recognising/mapping";
import type { RoleId } from "../../adopt/recognising/roles";
import { limitOf } from "../../adopt/recognising/typed-limits";
import type { NumberFieldFact } from "../widgets/judged";

export interface TypedFigure {
  readonly value: string;
  readonly unit: string;
  readonly basis: Basis;
}

interface FigureUnit {
  readonly unit: string;
  readonly words: string;
  /** What a logbook calls the figure in that unit. */
  readonly role: RoleId;
}

const figureIds = ["strength", "charge", "assay"] as const;
export type FigureId = (typeof figureIds)[number];

interface AskedFigure {
  readonly label: string;
  readonly hint?: string;
  readonly units: readonly FigureUnit[];
}

export const askedFigures: Readonly<Record<FigureId, AskedFigure>> = {
  strength: {
    label: "Titrant strength",
    units: [
      { unit: "mol/L", words: "mol/L (N)", role: "molarity" },
      { unit: "g/L", words: "g/L", role: "strength" },
      { unit: "% w/v", words: "%, g in 100 mL", role: "strength" },
    ],
  },
  charge: {
    label: "Base charge",
    units: [
      { unit: "%", words: "% of the oil's mass", role: "baseCharge" },
      { unit: "g/L", words: "g for a litre of oil", role: "baseCharge" },
    ],
  },
  assay: {
    label: "Assay of the lye",
    hint: "From its label: 90, not 0.90.",
    units: [{ unit: "%", words: "%", role: "assay" }],
  },
};

/** The figure that a role is typed as. */
export const figureOf = (role: RoleId): FigureId | undefined =>
  figureIds.find((id) => askedFigures[id].units.some((each) => each.role === role));

/** Where no unit is said yet, a figure is kept as the role that can be in several. */
const rolesOf = (id: FigureId): RoleId[] =>
  [...new Set(askedFigures[id].units.map(({ role }) => role))].reverse();

/** As it stands in a mapping. */
export function typedIn(mapping: LogbookMapping, id: FigureId): Partial<TypedFigure> {
  const known = mapping.constants.find(
    ({ role, from }) => from.kind === "typed" && rolesOf(id).includes(role),
  );
  if (known?.from.kind !== "typed") return {};
  const basis = basisOf(mapping, known.role);
  return {
    value: known.from.value,
    ...(known.unit === undefined ? {} : { unit: known.unit }),
    ...(basis === undefined ? {} : { basis }),
  };
}

const pickedOf = (units: readonly FigureUnit[], unit: string | undefined): FigureUnit | undefined =>
  units.find((each) => each.unit === unit) ?? (units.length === 1 ? units[0] : undefined);

export function withTyped(
  mapping: LogbookMapping,
  id: FigureId,
  change: Partial<TypedFigure>,
): LogbookMapping {
  const now = typedIn(mapping, id);
  const {
    value = "",
    unit,
    basis,
  } = {
    value: change.value ?? now.value,
    unit: change.unit ?? now.unit,
    basis: change.basis ?? now.basis,
  };
  const picked = pickedOf(askedFigures[id].units, unit);
  const role = picked?.role ?? rolesOf(id)[0] ?? "other";
  return withConstant(mapping, role, value, picked?.unit, hasBasis(role) ? basis : undefined);
}

const anything: Limits = { unit: "fraction", from: "0", fromIncluded: false, to: "1000" };

/** What the field expects: within the limits of its unit, once there is one. */
export function factOf(id: FigureId, unit: string | undefined): NumberFieldFact {
  const { label, hint, units } = askedFigures[id];
  const picked = pickedOf(units, unit);
  return {
    label,
    unit: picked?.unit.replace(" w/v", "") ?? "",
    limit: (picked && limitOf(picked.role, picked.unit)) ?? anything,
    isOptional: true,
    ...(hint === undefined ? {} : { hint }),
  };
}
