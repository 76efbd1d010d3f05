/** The chart below a what-if table: a line for each column that has a dose at every size. */
import type { Block, Cells, Chart } from "../../../sheet/port";
import { isProblem } from "../../../core/problem/problem";
import type { Doses } from "../../what-if/doses";
import type { Layout } from "../../what-if/layout";
import { columnName } from "../../what-if/names";
import type { WhatIfQuestion } from "../../what-if/question";
import { address, cellAt } from "../../../sheet/address";
import { areaAt } from "./what-if-cells";

/** Rows and columns of usual size that it lies over. */
const size = { rows: 18, columns: 8 };
/** A program draws no more lines than this. */
const mostLines = 255;

/** The cells below the table, one row left free. */
const chartPlace = (at: Block): Block => ({
  ...at,
  ...size,
  row: at.row + at.rows + 1,
});

/** ='What if'!$A$12, as a title that follows a cell. */
function followed(block: Block): string {
  const plain = address(block);
  const cell = plain.lastIndexOf("!") + 1;
  return `=${plain.slice(0, cell)}${plain.slice(cell).replace(/^([A-Z]+)(\d+)$/, "$$$1$$$2")}`;
}

export interface PlannedChart {
  /** Undefined when no column has a dose at every size. */
  readonly chart: Chart | undefined;
  /** Columns without a dose: an error would be drawn as a dose of nothing. */
  readonly left: readonly string[];
}

export function planChart(
  at: Block,
  question: WhatIfQuestion,
  doses: Doses,
  { sizes, doses: area, headings }: Layout,
): PlannedChart {
  const isWhole = (column: number): boolean =>
    doses.rows.every((row) => row[column] !== undefined && !isProblem(row[column]));
  const named = question.columns.map((column) => columnName(question.by, column));
  const lines = named
    .flatMap((name, index) =>
      isWhole(index)
        ? [{ name, values: areaAt(at, { ...area, column: area.column + index, columns: 1 }) }]
        : [],
    )
    .slice(0, mostLines);
  const left = named.filter((_, index) => !isWhole(index));
  if (lines.length === 0) return { chart: undefined, left };
  const chart: Chart = {
    sheet: at.sheet,
    kind: "lines",
    title: followed(cellAt(at.sheet, at.row, at.column)),
    acrossTitle: followed(cellAt(at.sheet, at.row + headings, at.column + sizes.column)),
    upTitle: followed(cellAt(at.sheet, at.row + headings, at.column + area.column)),
    across: areaAt(at, sizes),
    lines,
    place: chartPlace(at),
  };
  return { chart, left };
}

/** Addresses of the cells in a block that hold something. */
export const filledIn = (cells: Cells): string[] =>
  cells.values.flatMap((row, r) =>
    row.flatMap((value, c) =>
      value === "" && (cells.formulas[r]?.[c] ?? "") === ""
        ? []
        : [address(cellAt(cells.block.sheet, cells.block.row + r, cells.block.column + c))],
    ),
  );
