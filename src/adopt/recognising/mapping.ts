/**
 * What a person agreed that a table's columns are. Made from a guess, corrected column by column; no
 * guess is used before it has become a mapping.
 */
import type { TableGuess } from "./recognise";
import { type RoleId, roleOf } from "./roles";
import type { Basis, LogbookMapping, MappedColumn, MappedConstant } from "./shape";
import { isUsable } from "./typed-limits";
import { unitAlways, unitInHeading } from "./measures/units-of-roles";

export type { LogbookMapping, MappedColumn, MappedConstant } from "./shape";

export const mappingFrom = ({
  sheet,
  place,
  columns,
  constants,
  commas,
}: TableGuess): LogbookMapping => {
  const inColumns = new Set<RoleId>(columns.map(({ role }) => role));
  return {
    sheet,
    place,
    commas,
    columns: columns.map(({ column, heading, role, unit, basis }) => ({
      column,
      heading,
      role,
      unit,
      ...(basis === undefined ? {} : { basis }),
    })),
    constants: constants
      // A column says it row by row: the lone figure is then left alone.
      .filter(({ role }) => !inColumns.has(role))
      .map(({ role, unit, basis, row, column, label }) => ({
        role,
        unit,
        ...(basis === undefined ? {} : { basis }),
        from: { kind: "cell", row, column, label },
      })),
  };
};

/** One column is something else than was guessed. A role that stands once leaves the column it had. */
export function withColumn(
  mapping: LogbookMapping,
  column: number,
  role: RoleId,
  unit?: string,
): LogbookMapping {
  const isOnce = roleOf(role).repeats !== true;
  return {
    ...mapping,
    columns: mapping.columns.map((each) => {
      const { heading } = each;
      if (each.column === column) {
        const kept = each.role === role && each.basis !== undefined ? { basis: each.basis } : {};
        return { column, heading, role, unit: unit ?? unitInHeading(role, heading), ...kept };
      }
      return isOnce && each.role === role
        ? { column: each.column, heading, role: "other", unit: undefined }
        : each;
    }),
  };
}

/** One figure, in one unit or another: typing the one takes the other away. */
const inAnotherUnit: Readonly<Partial<Record<RoleId, RoleId>>> = {
  molarity: "strength",
  strength: "molarity",
  sampleMass: "sampleVolume",
  sampleVolume: "sampleMass",
};

/** A figure for all rows, typed, in a unit once one is said; "" takes it away. */
export function withConstant(
  mapping: LogbookMapping,
  role: RoleId,
  value: string,
  unit: string | undefined = unitAlways(role),
  basis?: Basis,
): LogbookMapping {
  const others = mapping.constants.filter(
    (each) =>
      each.role !== role && !(each.role === inAnotherUnit[role] && each.from.kind === "typed"),
  );
  if (value.trim() === "") return { ...mapping, constants: others };
  const typed: MappedConstant = {
    role,
    unit,
    ...(basis === undefined ? {} : { basis }),
    from: { kind: "typed", value: value.trim() },
  };
  return { ...mapping, constants: [...others, typed] };
}

/** Another unit for a figure that stands on the sheet. */
export const withUnit = (mapping: LogbookMapping, role: RoleId, unit: string): LogbookMapping => ({
  ...mapping,
  constants: mapping.constants.map((each) => (each.role === role ? { ...each, unit } : each)),
});

export const columnsOf = (mapping: LogbookMapping, role: RoleId): readonly MappedColumn[] =>
  mapping.columns.filter((each) => each.role === role);

export const columnOf = (mapping: LogbookMapping, role: RoleId): MappedColumn | undefined =>
  columnsOf(mapping, role)[0];

export const isKnown = (mapping: LogbookMapping, role: RoleId): boolean =>
  columnOf(mapping, role) !== undefined ||
  mapping.constants.some((each) => each.role === role && isUsable(each));
