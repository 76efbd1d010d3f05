/** A logbook of typed rows below one row of headings, its columns known. */
import type { LogbookMapping } from "../../../src/adopt/recognising/mapping";
import type { RoleId } from "../../../src/adopt/recognising/roles";
import type { LogbookValue } from "../../../src/adopt/recognising/sheet-cells";
import type { Logbook } from "../../../src/adopt/recheck/recheck";

/** @param columns what each holds, which is its heading too, and its unit */
export function bareLogbook(
  columns: readonly (readonly [RoleId, string | undefined])[],
  rows: readonly (readonly LogbookValue[])[],
): Logbook {
  const values = [columns.map(([role]) => role), ...rows];
  const mapping: LogbookMapping = {
    sheet: "Log",
    place: {
      headingRow: 0,
      unitsRow: undefined,
      groupRow: undefined,
      firstRow: 1,
      lastRow: rows.length,
      firstColumn: 0,
      lastColumn: columns.length - 1,
    },
    columns: columns.map(([role, unit], column) => ({ column, heading: role, role, unit })),
    constants: [],
    commas: "unsaid",
  };
  const filled = (text: string) => values.map((row) => row.map(() => text));
  const cells = { values, formulas: filled(""), formats: filled("General") };
  return { mapping, cells: { sheet: "Log", row: 0, column: 0, ...cells } };
}

/** Figures typed for the whole logbook; the base charge is of pure base. */
export const typedConstants = (
  constants: readonly (readonly [role: RoleId, value: string, unit?: string | undefined])[],
): LogbookMapping["constants"] =>
  constants.map(([role, value, unit]) => ({
    role,
    unit,
    ...(role === "baseCharge" ? { basis: "pure" as const } : {}),
    from: { kind: "typed" as const, value },
  }));
