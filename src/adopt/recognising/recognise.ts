/** A sheet looked through: its tables, what each column is guessed to be and why, and lone figures. */
import { mayBeAcross, turnedRound } from "../layouts/across";
import { likelyFrom } from "./sure";
import { commaHabit, commaOfRoles, eitherIn } from "./comma-habit";
import { findConstants, type ConstantGuess } from "./find-constants";
import { withDittosRead } from "./ditto";
import { findTables, placeAt, type TablePlace } from "./find-tables";
import { type ColumnGuess, guessColumns } from "./guess-columns";
import { headingParts } from "./heading";
import { endOf, type SheetCells } from "./sheet-cells";
import { withoutTotals } from "./totals-row";
import type { Commas } from "./typed-number";
import { fromWords } from "./evidence";

export interface TableGuess {
  readonly sheet: string;
  readonly place: TablePlace;
  readonly columns: readonly ColumnGuess[];
  /** Figures outside the tables that hold for all rows: a strength, an assay. */
  readonly constants: readonly ConstantGuess[];
  /** What the commas of typed figures are, by the habit of the sheet, else of the book. */
  readonly commas: Commas;
  /** Does it look like a logbook of titrations or batches at all? */
  readonly isLogbook: boolean;
  /** The headings stand in a column and each lot in one of its own: rows and columns are changed round. */
  readonly isAcross?: true;
  /** The cells as they were changed round: the places are theirs. */
  readonly turned?: SheetCells;
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
  commas: Commas,
): TableGuess {
  const columns = guessColumns(withDittosRead(cells, place), place, commas);
  return {
    sheet: cells.sheet,
    place: withoutTotals(columns, place, cells),
    columns,
    constants,
    commas,
    isLogbook: looksLikeOne(columns),
    ...(cells.isAcross === true ? { isAcross: true as const, turned: cells } : {}),
  };
}

/** Where figures do not say what their commas are, the columns that hold them may. */
function read(cells: SheetCells, places: readonly TablePlace[], ofBook: Commas): TableGuess[] {
  const as = (commas: Commas): TableGuess[] => {
    const constants = findConstants(cells, places, commas);
    return places.map((place) => tableAt(cells, place, constants, commas));
  };
  const own = commaHabit([cells]);
  const habit = own === "unsaid" ? ofBook : own;
  if (habit !== "unsaid") return as(habit);
  const tables = as("unsaid");
  if (!tables.some((each) => eitherIn(each, cells).length > 0)) return tables;
  const decimal = as("decimal");
  const isTold = decimal.some(({ place, columns }) => {
    const likely = columns.filter(({ score }) => score >= likelyFrom);
    return commaOfRoles({ place, columns: likely }, cells) === "decimal";
  });
  return isTold ? decimal : tables;
}

/** What a table is once a person has said in which row its headings stand. */
export const recogniseAt = (
  cells: SheetCells,
  headingRow: number,
  old: TablePlace,
  ofBook: Commas = "unsaid",
): TableGuess => read(cells, [placeAt(cells, headingRow, old)], ofBook)[0] as TableGuess;

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
  return tableAt(cells, place, [], commaHabit([cells]));
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

/**
 * Headings down one column say less than those along a row, unless nothing else does.
 * @param ofBook what commas are in the workbook, where this sheet does not say it
 */
export function recogniseSheet(cells: SheetCells, ofBook: Commas = "unsaid"): TableGuess[] {
  const tables = read(cells, findTables(cells, startsAnew), ofBook);
  const known = knownIn(tables);
  if (known >= 5 || !mayBeAcross(cells)) return tables;
  const turned = turnedRound(cells);
  const across = read(turned, findTables(turned, startsAnew), ofBook).filter(
    ({ isLogbook, columns }) => isLogbook && columns.some(({ role }) => naming.has(role)),
  );
  return knownIn(across) >= Math.max(4, 2 * known + 1) ? across : tables;
}
