/** What a file holds, by place, as the model of the page compares it. */
import type { Workbook } from "../../../src/xlsx";

export interface Found {
  /** The formula, or else the value as text, by "sheet!address". */
  readonly cells: ReadonlyMap<string, string>;
  /** Cells in which the answer of another one's formula stands: they follow what is typed in its way. */
  readonly follows: ReadonlySet<string>;
  /** Every row's values, by sheet. */
  readonly sheets: ReadonlyMap<string, readonly (readonly unknown[])[]>;
  /** Not where days are counted from 1904: the page says so there, and works nothing out. */
  readonly isWorkedOut: boolean;
}

/** A, B ... Z, AA ... */
const columnName = (column: number): string =>
  (column < 26 ? "" : columnName(Math.floor(column / 26) - 1)) +
  String.fromCharCode(65 + (column % 26));

export function foundIn(file: Workbook): Found {
  const cells = new Map<string, string>();
  const follows = new Set<string>();
  const sheets = new Map<string, unknown[][]>();
  for (const sheet of file.sheets) {
    const rows: unknown[][] = [];
    for (const { row, column, value, formula, spilledFrom } of sheet.cells) {
      const place = `${sheet.name}!${columnName(column)}${String(row + 1)}`;
      const isFormula = formula !== undefined && formula !== "";
      cells.set(place, isFormula ? formula : String(value ?? ""));
      (rows[row] ??= []).push(value);
      if (spilledFrom) follows.add(place);
    }
    sheets.set(sheet.name, rows);
  }
  return { cells, follows, sheets, isWorkedOut: file.dates !== 1904 };
}

/** A titration that the pane recorded. */
export interface Row {
  readonly lot: string;
  /** mL, those that stand. */
  readonly titres: readonly number[];
  /** mL, the one that was left out. */
  readonly omitted: number | undefined;
  readonly blank: number;
}

const isNear = (value: unknown, wanted: number): boolean =>
  typeof value === "number" && Math.abs(value - wanted) < 1e-9;

/** What is wrong with the row as it stands in the file. */
export function rowFault(
  { sheets, isWorkedOut }: Found,
  row: Row,
  isThere: boolean,
): string | undefined {
  const all = [...sheets.values()].flat();
  const found = all.filter((values) => values?.includes(row.lot));
  if (!isThere) return found.length > 0 ? `the row of ${row.lot} is in the file` : undefined;
  const values = found.find((each) => row.titres.every((titre) => each.includes(titre)));
  if (!values) return `the row of ${row.lot} is not in the file, or not with all its titres`;
  const mean = row.titres.reduce((sum, titre) => sum + titre, 0) / row.titres.length;
  if (isWorkedOut && !values.some((value) => isNear(value, mean - row.blank))) {
    return `the row of ${row.lot} does not come to ${String(mean - row.blank)} mL: ${JSON.stringify(values)}`;
  }
  if (row.omitted === undefined) return undefined;
  const words = `= ${row.omitted.toFixed(2)} mL: spilt`;
  const isSaid = values.some((value) => typeof value === "string" && value.endsWith(words));
  return isSaid && !values.includes(row.omitted)
    ? undefined
    : `the row of ${row.lot} does not leave out ${String(row.omitted)} mL, or does not say so`;
}

/** What is wrong with a sheet of doses that the pane wrote. */
export function sheetFault(
  { sheets, isWorkedOut }: Found,
  name: string,
  doses: readonly number[],
): string | undefined {
  const rows = sheets.get(name);
  if (!rows) return `the sheet ${name} is not in the file`;
  if (!isWorkedOut) return undefined;
  const values = rows.flat();
  const missing = doses.filter((dose) => !values.some((value) => isNear(Number(value) / dose, 1)));
  return missing.length > 0 ? `${name} holds no dose of ${String(missing[0])} g` : undefined;
}
