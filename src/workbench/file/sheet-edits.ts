/** What a file is told of one sheet beside its cells: widths, frozen rows, notes, choices, tables. */
import type { Place } from "../../sheet/area";
import { cellName } from "../../sheet/cell-name";
import type { Edit } from "../../xlsx";
import type { CellState, SheetState } from "./grid-state";
import type { TableState } from "./tables-in-grid";

export interface SheetPair {
  readonly before: SheetState | undefined;
  readonly now: SheetState;
}

export function widthEdits(
  { before, now }: SheetPair,
  charactersOf: (pixels: number) => number,
): Edit[] {
  return [...now.widths]
    .filter(([column, pixels]) => before?.widths.get(column) !== pixels)
    .map(([column, pixels]) => ({
      do: "set-width",
      sheet: now.name,
      column,
      characters: Math.min(255, Math.max(0, Math.round(charactersOf(pixels) * 100) / 100)),
    }));
}

export function freezeEdits({ before, now }: SheetPair): Edit[] {
  const { name: sheet, frozenRows: rows, frozenColumns: columns } = now;
  const isSame = (before?.frozenRows ?? 0) === rows && (before?.frozenColumns ?? 0) === columns;
  return isSame ? [] : [{ do: "freeze", sheet, rows, columns }];
}

const at = (sheet: SheetState, row: number, column: number): CellState | undefined =>
  sheet.cells.get(row)?.get(column);

/** The one formula of each column that has one in every row. */
function columnFormulas(sheet: SheetState, table: TableState): Record<string, string> {
  const formulas: [string, string][] = [];
  for (let column = table.column; column < table.column + table.columns; column += 1) {
    const heading = at(sheet, table.row, column)?.value;
    const first = at(sheet, table.row + 1, column)?.formula ?? "";
    if (typeof heading !== "string" || first === "") continue;
    let isSame = true;
    for (let row = table.row + 2; isSame && row < table.row + table.rows; row += 1) {
      isSame = at(sheet, row, column)?.formula === first;
    }
    if (isSame) formulas.push([heading, first]);
  }
  // as entries, since a heading may be any word: __proto__ would set nothing
  return Object.fromEntries(formulas);
}

const isSameArea = (a: TableState, b: TableState): boolean =>
  a.row === b.row && a.column === b.column && a.rows === b.rows && a.columns === b.columns;

function tableEdit(pair: SheetPair, table: TableState): Edit[] {
  const { now } = pair;
  const { name, row, column, rows, columns } = table;
  const area = { row, column, rows, columns };
  const there = pair.before?.tables.find((each) => each.name === name);
  if (there && isSameArea(there, table)) return [];
  return there
    ? [{ do: "grow-table", table: name, area }]
    : [{ do: "add-table", sheet: now.name, name, area, formulas: columnFormulas(now, table) }];
}

export const tableEdits = (pair: SheetPair): Edit[] =>
  pair.now.tables.flatMap((table) => tableEdit(pair, table));

type Found = { readonly row: number; readonly column: number; readonly cell: CellState };

/** What a program gives a row that does not say its height, and what a type of a size needs, in points. */
const usualHeight = 15;
const pointsPerPixel = 72 / 96;
const heightOfType = 1.45;

/** Rows of a new sheet as high as their largest type: not every program sees to that by itself. */
export function heightEdits({ before, now }: SheetPair): Edit[] {
  const given = [...now.heights]
    .filter(([row, pixels]) => before?.heights.get(row) !== pixels)
    .map(([row, pixels]): Edit => {
      const points = Math.round(pixels * pointsPerPixel * 100) / 100;
      return { do: "set-height", sheet: now.name, row, points };
    });
  if (before) return given;
  const made = [...now.cells].flatMap(([row, cells]): Edit[] => {
    if (now.heights.has(row)) return [];
    const largest = Math.max(0, ...[...cells.values()].map(({ style }) => style?.fs ?? 0));
    const points = Math.round(largest * heightOfType);
    return points > usualHeight ? [{ do: "set-height", sheet: now.name, row, points }] : [];
  });
  return [...made, ...given];
}

/** Words to choose from, one edit for each run of cells down a column that offer the same. */
function choices(sheet: string, found: readonly Found[]): Edit[] {
  const runs: { row: number; column: number; rows: number; words: readonly string[] }[] = [];
  const sorted = [...found].sort((a, b) => a.column - b.column || a.row - b.row);
  for (const { row, column, cell } of sorted) {
    const words = cell.words ?? [];
    const last = runs.at(-1);
    const goesOn =
      last?.column === column &&
      last.row + last.rows === row &&
      last.words.join("\n") === words.join("\n");
    if (goesOn) last.rows += 1;
    else runs.push({ row, column, rows: 1, words });
  }
  return runs.map(({ row, column, rows, words }) => ({
    do: "offer-words",
    sheet,
    area: { row, column, rows, columns: 1 },
    words,
  }));
}

interface Move {
  readonly from: Place;
  readonly to: Place;
}

type Hanging = ReadonlyMap<string, Place>;

/** Where each thing hangs; where a copy brought it along too, it stays where it was. */
function hangingOn(sheet: SheetState, before: Hanging = new Map()): Hanging {
  const found = new Map<string, Place>();
  for (const [row, cells] of sheet.cells) {
    for (const [column, { hanging }] of cells) {
      if (hanging === undefined) continue;
      const was = before.get(hanging);
      const isThere = was?.row === row && was.column === column;
      if (isThere || !found.has(hanging)) found.set(hanging, { row, column });
    }
  }
  return found;
}

/** What hangs on cells that changed places, by where it is now. */
function moved({ before, now }: SheetPair): ReadonlyMap<string, Move> {
  if (!before) return new Map();
  const was = hangingOn(before);
  return new Map(
    [...hangingOn(now, was)].flatMap(([name, to]) => {
      const from = was.get(name);
      return from && keyAt(from) !== keyAt(to) ? [[keyAt(to), { from, to }]] : [];
    }),
  );
}

const keyAt = ({ row, column }: Place): string => cellName(row, column);

/** What stands beside cells: only what was added, since nothing takes it away. */
export function besideCells(pair: SheetPair): Edit[] {
  const { before, now } = pair;
  const notes: Edit[] = [];
  const prints: Edit[] = [];
  const offered: Found[] = [];
  const moves = moved(pair);
  const there: Edit[] =
    moves.size === 0 ? [] : [{ do: "move-beside", sheet: now.name, moves: [...moves.values()] }];
  for (const [row, cells] of now.cells) {
    for (const [column, cell] of cells) {
      const was = before && at(before, row, column);
      if (cell.note !== "" && !moves.has(cellName(row, column)) && (was?.note ?? "") === "") {
        notes.push({ do: "add-note", sheet: now.name, row, column, text: cell.note });
      }
      if (cell.words && !was?.words) offered.push({ row, column, cell });
      if (cell.print && !was?.print) {
        const { rows, columns, landscape, secondPage } = cell.print;
        const area = { row, column, rows, columns };
        const setup = { area, landscape, fitToWidth: true };
        const pages = secondPage === undefined ? {} : { secondPage };
        prints.push({ do: "print-setup", sheet: now.name, ...setup, ...pages });
      }
    }
  }
  return [...there, ...notes, ...choices(now.name, offered), ...prints];
}
