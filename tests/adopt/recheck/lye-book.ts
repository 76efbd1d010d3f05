/** A logbook of titrations and what lye was taken, its base charge pure: the last columns are the caller's. */
import type { RoleId } from "../../../src/adopt/recognising/roles";
import type { LogbookValue } from "../../../src/adopt/recognising/sheet-cells";
import type { Logbook } from "../../../src/adopt/recheck/recheck";
import { bareLogbook } from "./bare-logbook";
import type { Given } from "./rows";

type Columns = readonly (readonly [RoleId, string | undefined])[];

/** @param lye what stands in the last columns of a row, by its place from 0 */
export function lyeBook(
  rows: readonly Given[],
  last: Columns,
  lye: (row: Given, at: number) => readonly LogbookValue[],
): Logbook {
  const columns: Columns = [
    ["lot", undefined],
    ["titre", "mL"],
    ["blank", "mL"],
    ["sampleMass", "g"],
    ["molarity", "mol/L"],
    ["oilAmount", "L"],
    ["base", undefined],
    ["assay", "%"],
    ["baseCharge", "g/L"],
    ...last,
  ];
  const { mapping, cells } = bareLogbook(
    columns,
    rows.map((row, at) => [
      `NQ-${String(at)}`,
      row.titres[0] ?? "",
      row.blank,
      row.mass,
      row.molarity,
      row.amount,
      "KOH",
      row.assay,
      row.charge,
      ...lye(row, at),
    ]),
  );
  const pure = mapping.columns.map((each) =>
    each.role === "baseCharge" ? { ...each, basis: "pure" as const } : each,
  );
  return { cells, mapping: { ...mapping, columns: pure } };
}
