/** What is sorted when a cell is selected: the table it stands in, or the cells around it with headings. */
import type { Block, CellPlace } from "../../sheet/area";
import { tokensOf } from "../../sheet/formula/token";
import { readArea } from "../../xlsx/cell-address";
import { refused, type Refusal } from "../../sheet/refusal";
import type { WorkbookCells } from "../engine/workbook-cells";

export interface SortBlock {
  /** The rows that move: without headings and totals. */
  readonly rows: Block;
  readonly isTable: boolean;
}

interface Edges {
  top: number;
  left: number;
  bottom: number;
  right: number;
}

const blockOf = (sheet: string, { top, left, bottom, right }: Edges): Block => ({
  sheet,
  row: top,
  column: left,
  rows: bottom - top + 1,
  columns: right - left + 1,
});

/** Everything that hangs together with the cell, side by side or corner to corner. */
function around(cells: WorkbookCells, { sheet, row, column }: CellPlace): Edges {
  const isFilled = (at: number, across: number): boolean => {
    const value = cells.value({ sheet, row: at, column: across });
    return (
      (value !== null && value !== "") || cells.formula({ sheet, row: at, column: across }) !== ""
    );
  };
  const found: Edges = { top: row, left: column, bottom: row, right: column };
  const inRow = (at: number): boolean => {
    for (let each = Math.max(0, found.left - 1); each <= found.right + 1; each += 1)
      if (isFilled(at, each)) return true;
    return false;
  };
  const inColumn = (across: number): boolean => {
    for (let each = Math.max(0, found.top - 1); each <= found.bottom + 1; each += 1)
      if (isFilled(each, across)) return true;
    return false;
  };
  const grown = (does: () => boolean, edge: keyof Edges, by: number): boolean => {
    let isGrown = false;
    for (; does(); isGrown = true) found[edge] += by;
    return isGrown;
  };
  // rows as far as they go before a column is looked through: a column is as long as all of them
  for (let grows = true; grows;) {
    const byRows = [
      grown(() => inRow(found.bottom + 1), "bottom", 1),
      grown(() => found.top > 0 && inRow(found.top - 1), "top", -1),
    ];
    const byColumns = [
      grown(() => inColumn(found.right + 1), "right", 1),
      grown(() => found.left > 0 && inColumn(found.left - 1), "left", -1),
    ];
    grows = [...byRows, ...byColumns].includes(true);
  }
  return found;
}

const range = (from: number, to: number): number[] =>
  Array.from({ length: Math.max(0, to - from + 1) }, (_, index) => from + index);

/**
 * Does the row add up others of the block? Then it stays at the end. A share of the whole column, or a sum
 * that runs down with each row, is no such row: its own row is among what it adds, or the one above does the same.
 */
function addsUp(cells: WorkbookCells, sheet: string, row: number, edges: Edges): boolean {
  const isSum = (at: number, column: number): boolean =>
    tokensOf(cells.formula({ sheet, row: at, column })).some(({ kind, text }) => {
      const area = kind === "cells" ? readArea(text.replaceAll("$", "")) : undefined;
      if (area === undefined || area.rows < 2) return false;
      return area.row >= edges.top && area.row + area.rows <= at;
    });
  return range(edges.left, edges.right).some(
    (column) => isSum(row, column) && !isSum(row - 1, column),
  );
}

const noHeadings =
  "Sorting goes by headings: select a cell of a table, or of cells that have a row of headings, all filled in, above them.";

export function sortBlock(cells: WorkbookCells, place: CellPlace): SortBlock | Refusal {
  const { sheet } = place;
  const isIn = ({ top, left, bottom, right }: Edges): boolean =>
    top <= place.row && place.row <= bottom && left <= place.column && place.column <= right;
  const tables = cells.names.tables(sheet);
  const table = tables.find(isIn);
  if (table) return { rows: blockOf(sheet, { ...table, top: table.top + 1 }), isTable: true };
  const edges = around(cells, place);
  const touches = tables.some(
    (each) =>
      each.top <= edges.bottom &&
      edges.top <= each.bottom &&
      each.left <= edges.right &&
      edges.left <= each.right,
  );
  if (touches) {
    return refused("These cells touch a table: select a cell of the table to sort that.");
  }
  const isHeaded = range(edges.left, edges.right).every((column) => {
    const heading = { sheet, row: edges.top, column };
    const value = cells.value(heading);
    return typeof value === "string" && value !== "" && cells.formula(heading) === "";
  });
  while (edges.bottom > edges.top + 1 && addsUp(cells, sheet, edges.bottom, edges))
    edges.bottom -= 1;
  if (!isHeaded || edges.bottom === edges.top) return refused(noHeadings);
  return { rows: blockOf(sheet, { ...edges, top: edges.top + 1 }), isTable: false };
}
