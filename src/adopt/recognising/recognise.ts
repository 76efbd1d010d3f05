/** A sheet looked through: its tables, what each column is guessed to be and why, and lone figures. */
import { mayBeAcross, turnedRound } from "../layouts/across";
import { likelyFrom } from "./sure";
import { findConstants, type ConstantGuess } from "./find-constants";
import { withDittosRead } from "./ditto";
import { findTables, type TablePlace } from "./find-tables";
import { type ColumnGuess, guessColumns } from "./guess-columns";
import { headingParts } from "./heading";
import type { SheetCells } from "./sheet-cells";
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

function tablesOf(cells: SheetCells): TableGuess[] {
  const commaIsDecimal = usesDecimalCommas(cells);
  const places = findTables(cells, startsAnew);
  const constants = findConstants(cells, places, commaIsDecimal);
  return places.map((place) => {
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
  });
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
