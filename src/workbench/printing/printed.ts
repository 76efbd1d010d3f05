/** A sheet as it is printed: the cells of its area in their looks, and the rows that stand on each page. */
import { BooleanNumber, WrapStrategy } from "@univerjs/core";
import type { Area } from "../../sheet/area";
import { textWidth } from "../../sheet/letters";
import { onPages } from "./on-one-page";
import type { PrintedCell, PrintedPart, PrintedRow } from "./printed-parts";
import type { SheetPrint } from "./sheet-print";

export interface PrintedSheet {
  readonly name: string;
  readonly isLandscape: boolean;
  /** Of the whole, so that each part is as wide as the page at the most. */
  readonly scale: number;
  readonly parts: readonly PrintedPart[];
  readonly leftOut: number;
}

/** The sheet that is printed, as the grid has it. */
export interface PrintSource {
  readonly name: string;
  readonly extent: Area | undefined;
  readonly frozenRows: number;
  readonly frozenColumns: number;
  readonly merged: readonly Area[];
  width(column: number): number;
  height(row: number): number;
  /** Hidden rows and columns are not printed. */
  showsRow(row: number): boolean;
  showsColumn(column: number): boolean;
  cell(row: number, column: number): Omit<PrintedCell, "columns" | "rows">;
}

/** Pixels across a page of A4 between margins of 10 mm: 190 mm upright, 277 mm lying. */
const upright = 718;
const lying = 1046;

const mostRows = 5000;

/** Smaller letters are not read on paper: a wider sheet goes on beside, on pages of its own. */
const smallest = 0.6;

/** Columns in parts that a page has room for, those that are frozen at the left of each. */
function partsOf(
  columns: readonly number[],
  repeated: readonly number[],
  width: (column: number) => number,
  room: number,
): (readonly number[])[] {
  const all = (list: readonly number[]) => list.reduce((sum, each) => sum + width(each), 0);
  if (all(columns) <= room) return [columns];
  const kept = all(repeated) < room / 2 ? repeated : [];
  const parts: number[][] = [];
  let used = Infinity;
  for (const column of columns.filter((each) => !kept.includes(each))) {
    if (used + width(column) > room) {
      parts.push([...kept]);
      used = all(kept);
    }
    parts.at(-1)?.push(column);
    used += width(column);
  }
  return parts;
}

const wraps = (cell: PrintedCell): boolean => cell.style?.tb === WrapStrategy.WRAP;

/** A text that is not wrapped runs on over empty cells at its right, as on the screen. */
function runOn(cells: readonly PrintedCell[], widths: readonly number[]): PrintedCell[] {
  const found: PrintedCell[] = [];
  let column = 0;
  for (let at = 0; at < cells.length; at++) {
    const cell = cells[at] as PrintedCell;
    let { columns } = cell;
    if (columns === 1 && cell.rows === 1 && !cell.isFigure && cell.text !== "" && !wraps(cell)) {
      const size = ((cell.style?.fs ?? 11) * 96) / 72;
      const needed = textWidth(cell.text, cell.style?.bl === BooleanNumber.TRUE) * size + 8;
      const wide = () =>
        widths.slice(column, column + columns).reduce((sum, each) => sum + each, 0);
      while (wide() < needed && cells[at + 1]?.text === "" && cells[at + 1]?.columns === 1) {
        columns += 1;
        at += 1;
      }
    }
    found.push({ ...cell, columns });
    column += columns;
  }
  return found;
}

const from = (start: number, count: number): number[] =>
  Array.from({ length: Math.max(0, count) }, (_, index) => start + index);

export function printedSheet(source: PrintSource, print: SheetPrint): PrintedSheet {
  const area = print.area ?? source.extent ?? { row: 0, column: 0, rows: 0, columns: 0 };
  const filled = source.extent ?? area;
  // an area may reach far beyond what is filled in
  const lastRow = Math.min(area.row + area.rows, filled.row + filled.rows);
  const lastColumn = Math.min(area.column + area.columns, filled.column + filled.columns);
  const columns = from(area.column, lastColumn - area.column).filter((at) =>
    source.showsColumn(at),
  );
  const repeat = print.repeatRows ?? { row: 0, rows: source.frozenRows };
  const isRepeated = (row: number) => row >= repeat.row && row < repeat.row + repeat.rows;
  const all = from(area.row, lastRow - area.row).filter((row) => source.showsRow(row));
  const body = all.filter((row) => !isRepeated(row));
  const inArea = (row: number, column: number, { rows, columns: wide, ...at }: Area) =>
    row >= at.row && row < at.row + rows && column >= at.column && column < at.column + wide;
  const total = columns.reduce((sum, column) => sum + source.width(column), 0);
  const isLandscape = print.isLandscape ?? total > upright;
  const paper = isLandscape ? lying : upright;
  const fixed = columns.filter((column) => column < source.frozenColumns);
  const parts = partsOf(columns, fixed, (column) => source.width(column), paper / smallest);
  const rowOf = (row: number, shown: readonly number[], beside: readonly number[]): PrintedRow => ({
    height: source.height(row),
    cells: runOn(
      beside.flatMap((column): PrintedCell[] => {
        const merge = source.merged.find((each) => inArea(row, column, each));
        if (!merge) return [{ ...source.cell(row, column), columns: 1, rows: 1 }];
        const across = beside.filter((at) => inArea(merge.row, at, merge));
        const down = shown.filter((at) => inArea(at, merge.column, merge));
        if (row !== down[0] || column !== across[0]) return [];
        const cell = source.cell(merge.row, merge.column);
        return [{ ...cell, columns: across.length, rows: down.length }];
      }),
      beside.map((column) => source.width(column)),
    ),
  });
  const repeated = from(repeat.row, repeat.rows).filter((row) => source.showsRow(row));
  const before = body.filter((row) => row < repeat.row);
  const after = body.filter((row) => row >= repeat.row);
  const shown = after.slice(0, mostRows);
  const widest = Math.max(
    1,
    ...parts.map((part) => part.reduce((sum, column) => sum + source.width(column), 0)),
  );
  const scale = Math.min(1, paper / widest);
  const second = shown.findIndex((row) => row >= (print.secondPage ?? Infinity));
  return {
    name: source.name,
    isLandscape,
    scale,
    parts: parts.flatMap((columnsOfPart) => {
      const part: PrintedPart = {
        widths: columnsOfPart.map((column) => source.width(column)),
        before: before.map((row) => rowOf(row, before, columnsOfPart)),
        above: repeated.map((row) => rowOf(row, repeated, columnsOfPart)),
        rows: shown.map((row) => rowOf(row, shown, columnsOfPart)),
      };
      return second > 0 ? onPages(part, second, { isLandscape, scale, smallest }) : [part];
    }),
    leftOut: after.length - shown.length,
  };
}
