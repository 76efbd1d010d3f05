/**
 * Where the tables of a sheet stand. Empty columns part tables that stand side by side, empty rows part
 * those that stand one below the other; the heading row is the first row of words over rows of data.
 */
import { endOf, heldCell, isHeld, type SheetCells } from "./sheet-cells";
import {
  countIn,
  isFigure,
  isHeadingRow,
  isUnitsRow,
  isWord,
  rowsOfWords,
  runs,
  type Span,
} from "./row-kinds";

export interface TablePlace {
  readonly headingRow: number;
  /** The row of units under the headings, when there is one. */
  readonly unitsRow: number | undefined;
  /** A row above whose words reach over several headings: "Titres, mL" over 1, 2, 3. */
  readonly groupRow: number | undefined;
  readonly firstRow: number;
  readonly lastRow: number;
  readonly firstColumn: number;
  readonly lastColumn: number;
}

/** A row with fewer, wider words just above the headings. */
function groupRowAbove(cells: SheetCells, row: number, span: Span): number | undefined {
  if (row === 0) return undefined;
  const words = countIn(cells, row - 1, span, isWord);
  const figures = countIn(cells, row - 1, span, isFigure);
  return words >= 1 && figures === 0 && words < countIn(cells, row, span, (v) => v !== "")
    ? row - 1
    : undefined;
}

/** The columns a heading row really uses: stray cells above or below do not widen the table. */
function trimmed(cells: SheetCells, row: number, span: Span, lastRow: number): Span {
  const uses = (column: number): boolean => {
    if (isHeld(heldCell(cells, row, column))) return true;
    for (let each = row + 1; each <= Math.min(lastRow, row + 20); each += 1) {
      if (isHeld(heldCell(cells, each, column))) return true;
    }
    return false;
  };
  let { from, to } = span;
  while (from < to && !uses(from)) from += 1;
  while (to > from && !uses(to)) to -= 1;
  return { from, to };
}

/** As wide as these rows are: a second table may be narrower than the first. */
function usedIn(cells: SheetCells, { from, to }: Span, firstRow: number, lastRow: number): Span {
  const last = Math.min(lastRow, firstRow + 30);
  const uses = (column: number): boolean => {
    for (let row = firstRow; row <= last; row += 1)
      if (isHeld(heldCell(cells, row, column))) return true;
    return false;
  };
  let [left, right] = [from, to];
  while (left < right && !uses(left)) left += 1;
  while (right > left && !uses(right)) right -= 1;
  return { from: left, to: right };
}

/** "1", "2", "3" below "mL"; "1 mL", "2 (mL)" below "Titre". */
const isReplicate = (value: unknown): boolean =>
  isFigure(value) && /^[1-9](?:[\s,]*[([]?(?:mls?|cc|ccm)[)\]]?)?$/i.test(String(value).trim());

/** A second row of headings: no figure in it, words in part of it, and figures right below. */
function isHeadingToo(cells: SheetCells, row: number, span: Span, last: number): boolean {
  if (row + 1 > last || isUnitsRow(cells, row, span)) return false;
  const words = countIn(cells, row, span, isWord);
  const figures = countIn(cells, row, span, isFigure);
  const small = countIn(cells, row, span, isReplicate);
  const figuresBelow = countIn(cells, row + 1, span, isFigure);
  return words >= 2 && figures === small && words > small && figuresBelow >= 2 + small;
}

function tablesIn(cells: SheetCells, whole: Span, endRow: number): TablePlace[] {
  const rowRuns = runs(cells.row, endRow, (row) => countIn(cells, row, whole, (v) => v !== "") > 0);
  const found: TablePlace[] = [];
  for (const { from, to } of rowRuns) {
    const span = usedIn(cells, whole, from, to);
    let heading: number | undefined;
    for (let row = from; row < to && row < from + 15 && heading === undefined; row += 1) {
      if (isHeadingRow(cells, row, span, to)) heading = row;
    }
    const last = found[found.length - 1];
    if (heading === undefined) {
      // Rows after a gap go on with the table above, when they look like its rows.
      const isData = last && countIn(cells, from, span, isFigure) >= 2;
      if (isData) found[found.length - 1] = { ...last, lastRow: to };
      continue;
    }
    const first = heading;
    if (isHeadingToo(cells, heading + 1, span, to)) heading += 1;
    const columns = trimmed(cells, heading, span, to);
    const unitsRow = isUnitsRow(cells, heading + 1, columns) ? heading + 1 : undefined;
    found.push({
      headingRow: heading,
      unitsRow,
      groupRow: heading > first ? first : groupRowAbove(cells, heading, columns),
      firstRow: (unitsRow ?? heading) + 1,
      lastRow: to,
      firstColumn: columns.from,
      lastColumn: columns.to,
    });
  }
  return found;
}

/** A table whose headings a person says: as wide as the old one, down to where its rows end. */
export function placeAt(cells: SheetCells, headingRow: number, old: TablePlace): TablePlace {
  const span = { from: old.firstColumn, to: old.lastColumn };
  const end = endOf(cells).row;
  const unitsRow = isUnitsRow(cells, headingRow + 1, span) ? headingRow + 1 : undefined;
  const firstRow = (unitsRow ?? headingRow) + 1;
  const isFilled = (row: number): boolean => countIn(cells, row, span, (v) => v !== "") > 0;
  let lastRow = Math.max(firstRow, Math.min(old.lastRow, end - 1));
  while (lastRow + 1 < end && isFilled(lastRow + 1)) lastRow += 1;
  const groupRow = groupRowAbove(cells, headingRow, span);
  const { firstColumn, lastColumn } = old;
  return { headingRow, unitsRow, groupRow, firstRow, lastRow, firstColumn, lastColumn };
}

/** An empty column inside one table parts nothing: same heading row, and one set of rows as long as the other. */
function isOneTable(left: TablePlace, right: TablePlace, startsAnew: boolean): boolean {
  const sameRows = left.headingRow === right.headingRow && right.lastRow <= left.lastRow;
  return sameRows && right.firstColumn - left.lastColumn === 2 && !startsAnew;
}

/**
 * @param startsAnew does the heading in this cell begin a table of its own (a date, a lot, a batch)?
 */
export function findTables(
  cells: SheetCells,
  startsAnew: (heading: string) => boolean,
): TablePlace[] {
  const end = endOf(cells);
  const full = rowsOfWords(cells, end.row);
  // A column counts as empty when at most a title reaches into it.
  const isUsed = (column: number): boolean => {
    if (full.some((row) => isWord(heldCell(cells, row, column).value))) return true;
    let held = 0;
    for (let row = cells.row; row < end.row && held < 2; row += 1) {
      if (isHeld(heldCell(cells, row, column))) held += 1;
    }
    return held >= 2;
  };
  const found: TablePlace[] = [];
  for (const span of runs(cells.column, end.column, isUsed)) {
    for (const table of tablesIn(cells, span, end.row)) {
      const heading = heldCell(cells, table.headingRow, table.firstColumn).value;
      const left = found.findIndex((each) =>
        isOneTable(each, table, typeof heading === "string" && startsAnew(heading)),
      );
      const joined = found[left];
      if (joined) found[left] = { ...joined, lastColumn: table.lastColumn };
      else found.push(table);
    }
  }
  return found;
}
