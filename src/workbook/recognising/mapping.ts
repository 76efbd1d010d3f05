/**
 * What a person agreed that a table's columns are. Made from a guess, corrected column by column; no
 * guess is used before it has become a mapping.
 */
import { soleBase } from "./written-units";
import type { TablePlace } from "./find-tables";
import type { TableGuess } from "./recognise";
import { type RoleId, roleOf } from "./roles";

export interface MappedColumn {
  readonly column: number;
  readonly heading: string;
  readonly role: RoleId;
  readonly unit: string | undefined;
}

/** A figure that holds for all rows: in a cell of the sheet, or typed in the pane. */
export interface MappedConstant {
  readonly role: RoleId;
  readonly unit: string | undefined;
  readonly from:
    | {
        readonly kind: "cell";
        readonly row: number;
        readonly column: number;
        readonly label: string;
      }
    | { readonly kind: "typed"; readonly value: string };
}

export interface LogbookMapping {
  readonly sheet: string;
  readonly place: TablePlace;
  readonly columns: readonly MappedColumn[];
  readonly constants: readonly MappedConstant[];
  readonly commaIsDecimal: boolean;
}

export const mappingFrom = ({
  sheet,
  place,
  columns,
  constants,
  commaIsDecimal,
}: TableGuess): LogbookMapping => {
  const inColumns = new Set<RoleId>(columns.map(({ role }) => role));
  return {
    sheet,
    place,
    commaIsDecimal,
    columns: columns.map(({ column, heading, role, unit }) => ({ column, heading, role, unit })),
    constants: constants
      // A column says it row by row: the lone figure is then left alone.
      .filter(({ role }) => !inColumns.has(role))
      .map(({ role, unit, row, column, label }) => ({
        role,
        unit,
        from: { kind: "cell", row, column, label },
      })),
  };
};

/** One column is something else than was guessed. A role that stands once leaves the column it had. */
export function withColumn(
  mapping: LogbookMapping,
  column: number,
  role: RoleId,
  unit: string | undefined = roleOf(role).units[0],
): LogbookMapping {
  const isOnce = roleOf(role).repeats !== true;
  return {
    ...mapping,
    columns: mapping.columns.map((each) => {
      if (each.column === column) return { ...each, role, unit };
      return isOnce && each.role === role ? { ...each, role: "other", unit: undefined } : each;
    }),
  };
}

/** A figure for all rows, typed; "" takes it away. */
export function withConstant(
  mapping: LogbookMapping,
  role: RoleId,
  value: string,
  unit: string | undefined = roleOf(role).units[0],
): LogbookMapping {
  const others = mapping.constants.filter((each) => each.role !== role);
  if (value.trim() === "") return { ...mapping, constants: others };
  return {
    ...mapping,
    constants: [...others, { role, unit, from: { kind: "typed", value: value.trim() } }],
  };
}

export const columnsOf = (mapping: LogbookMapping, role: RoleId): readonly MappedColumn[] =>
  mapping.columns.filter((each) => each.role === role);

export const columnOf = (mapping: LogbookMapping, role: RoleId): MappedColumn | undefined =>
  columnsOf(mapping, role)[0];

export const isKnown = (mapping: LogbookMapping, role: RoleId): boolean =>
  columnOf(mapping, role) !== undefined || mapping.constants.some((each) => each.role === role);

export interface Lack {
  /** Any one of these would do. */
  readonly roles: readonly RoleId[];
  readonly sentence: string;
}

/** What the arithmetic still needs, in words. */
export function lacks(mapping: LogbookMapping): Lack[] {
  const named = soleBase(mapping);
  // "ml KOH" says what the burette held, "KOH g" what was dosed.
  const isNamed = (role: RoleId): boolean =>
    (role === "titrantBase" && named.titrant !== undefined) ||
    (role === "base" && named.catalyst !== undefined);
  const knows = (...roles: RoleId[]): boolean =>
    roles.some((role) => isKnown(mapping, role) || isNamed(role));
  const found: Lack[] = [];
  if (knows("titre", "meanTitre", "correctedTitre")) {
    if (!knows("molarity", "strength"))
      found.push({
        roles: ["molarity", "strength"],
        sentence: "How strong was the titrant: mol/L or g/L?",
      });
    if (!knows("molarity") && !knows("titrantBase") && knows("strength"))
      found.push({ roles: ["titrantBase"], sentence: "Which base was in the burette?" });
    if (!knows("sampleMass", "sampleVolume"))
      found.push({
        roles: ["sampleMass", "sampleVolume"],
        sentence: "How much oil was titrated: g or mL?",
      });
  }
  if (mapping.columns.some(({ role, unit }) => role === "oilAmount" && unit === "gal")) {
    found.push({ roles: ["oilAmount"], sentence: "Which gallon is the oil in: US or imperial?" });
  }
  if (knows("acidDose", "catalyst", "catalystRate", "weighed")) {
    if (!knows("base")) found.push({ roles: ["base"], sentence: "Which base is the catalyst?" });
    if (!knows("assay"))
      found.push({ roles: ["assay"], sentence: "What is the assay of the lye, in percent?" });
    if (knows("catalyst", "catalystRate") && !knows("baseCharge"))
      found.push({
        roles: ["baseCharge"],
        sentence: "What is the base charge: % of the oil's mass, or g/L?",
      });
  }
  return found;
}
