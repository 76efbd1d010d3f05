/** A sheet looked through: its tables, what each column is guessed to be and why, and lone figures. */
import { mayBeAcross, turnedRound } from "../layouts/across";
import { likelyFrom } from "./sure";
import { findConstants, type ConstantGuess } from "./find-constants";
import { withDittosRead } from "./ditto";
import { findTables, placeAt, type TablePlace } from "./find-tables";
import { type ColumnGuess, guessColumns } from "./guess-columns";
import { headingParts } from "./heading";
import { endOf, type SheetCells } from "./sheet-cells";
import { withoutTotals } from "./totals-row";
import { hasDecimalComma } from "./typed-number";
import { fromWords } from "./evidence";

export interface TableGuess {
  readonly sheet: string;
  readonly place: TablePlace;
  readonly columns: readonly ColumnGuess[];
  /** Figures outside the tables that hold for all rows: a strength, an assay. */
  readonly constants: readonly ConstantGuess[];
  /** This sheet's typed figures have decimal commas. */
  readonly commaIsDecimal: boolean;
  /** Does it look like a logbook of titrations or batches at all? */
  readonly isLogbook: boolean;
  /** The headings stand in a column and each lot in one of its own: rows and columns are changed round. */
  readonly isAcross?: true;
  /** The cells as they were changed round: the places are theirs. */
  readonly turned?: SheetCells;
}

function usesDecimalCommas(cells: SheetCells): boolean {
  let commas = 0;
  for (const row of cells.values.slice(0, 300)) {
    for (const value of row) if (typeof value === "string" && hasDecimalComma(value)) commas += 1;
  }
  return commas >= 3;
}

/** A second table beside the first begins with a date, a lot or a batch of its own. */
const startsAnew = (heading: string): boolean => {
  const parts = headingParts(heading);
  return (["date", "lot", "batch", "number"] as const).some(
    (role) => fromWords(role, parts, heading).points >= 0.7,
  );
};

const telling = new Set([
  "titre",
  "blank",
  "acidValue",
  "ffa",
  "catalyst",
  "methanol",
  "meanTitre",
  "correctedTitre",
  "oilAmount",
  "acidDose",
  "catalystRate",
]);

/** Identify a row or say something of it: beside one telling column they make a logbook. */
const besideOne = new Set([
  "date",
  "lot",
  "batch",
  "oil",
  "sampleMass",
  "sampleVolume",
  "molarity",
  "strength",
  "number",
]);

/** Two columns that only such logbooks have; or one of them, beside what names its rows. */
function looksLikeOne(columns: readonly ColumnGuess[]): boolean {
  const known = new Set(columns.map(({ role }) => role));
  const tells = columns.filter(({ role, score }) => telling.has(role) && score >= likelyFrom);
  if (new Set(tells.map(({ role }) => role)).size >= 2) return true;
  const isTitrants =
    known.has("date") && (known.has("molarity") || known.has("strength")) && columns.length <= 6;
  return (tells.length >= 1 || isTitrants) && [...known].some((role) => besideOne.has(role));
}

function tableAt(
  cells: SheetCells,
  place: TablePlace,
  constants: readonly ConstantGuess[],
  commaIsDecimal: boolean,
): TableGuess {
  const columns = guessColumns(withDittosRead(cells, place), place, commaIsDecimal);
  return {
    sheet: cells.sheet,
    place: withoutTotals(columns, place, cells),
    columns,
    constants,
    commaIsDecimal,
    isLogbook: looksLikeOne(columns),
    ...(cells.isAcross === true ? { isAcross: true as const, turned: cells } : {}),
  };
}

function tablesOf(cells: SheetCells): TableGuess[] {
  const commaIsDecimal = usesDecimalCommas(cells);
  const places = findTables(cells, startsAnew);
  const constants = findConstants(cells, places, commaIsDecimal);
  return places.map((place) => tableAt(cells, place, constants, commaIsDecimal));
}

/** What a table is once a person has said in which row its headings stand. */
export function recogniseAt(cells: SheetCells, headingRow: number, old: TablePlace): TableGuess {
  const commaIsDecimal = usesDecimalCommas(cells);
  const place = placeAt(cells, headingRow, old);
  return tableAt(cells, place, findConstants(cells, [place], commaIsDecimal), commaIsDecimal);
}

/** A sheet on which no table was found, from its first row on. */
export function wholeSheet(cells: SheetCells): TableGuess | undefined {
  const end = endOf(cells);
  if (cells.values.length < 2 || end.column - cells.column < 2) return undefined;
  const place: TablePlace = {
    headingRow: cells.row,
    unitsRow: undefined,
    groupRow: undefined,
    firstRow: cells.row + 1,
    lastRow: end.row - 1,
    firstColumn: cells.column,
    lastColumn: end.column - 1,
  };
  return tableAt(cells, place, [], usesDecimalCommas(cells));
}

const knownIn = (tables: readonly TableGuess[]): number =>
  tables.reduce(
    (sum, { columns, isLogbook }) =>
      sum +
      (isLogbook
        ? new Set(columns.map(({ role }) => role).filter((it) => it !== "other")).size
        : 0),
    0,
  );

const naming = new Set(["date", "lot", "batch"]);

/** Headings down one column say less than those along a row, unless nothing else does. */
export function recogniseSheet(cells: SheetCells): TableGuess[] {
  const tables = tablesOf(cells);
  const known = knownIn(tables);
  if (known >= 5 || !mayBeAcross(cells)) return tables;
  const across = tablesOf(turnedRound(cells)).filter(
    ({ isLogbook, columns }) => isLogbook && columns.some(({ role }) => naming.has(role)),
  );
  return knownIn(across) >= Math.max(4, 2 * known + 1) ? across : tables;
}
