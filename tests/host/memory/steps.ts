/** What each step does to the workbook in memory. A fault means: this step cannot be done. */
import { type Block, type Content, type Fault, fault, type Step } from "../../../src/sheet/port";
import {
  cellAt,
  cellToChange,
  emptySheet,
  isNameTaken,
  type MemoryBook,
  type MemoryCell,
  type MemorySheet,
  sheetNamed,
  tableNamed,
} from "./book";

type Doing<Kind extends Step["do"]> = (
  book: MemoryBook,
  step: Extract<Step, { do: Kind }>,
) => Fault | undefined;

/** A sheet that may be changed. */
function openSheet(book: MemoryBook, name: string): MemorySheet | Fault {
  const sheet = sheetNamed(book, name);
  if (!sheet) return fault("failed", name);
  return sheet.isProtected ? fault("sheet-protected", name) : sheet;
}

const isFault = (found: MemorySheet | Fault): found is Fault => "code" in found;

/** Does something to every cell of a block. */
function eachCell(
  book: MemoryBook,
  block: Block,
  change: (cell: MemoryCell, row: number, column: number) => void,
): Fault | undefined {
  const sheet = openSheet(book, block.sheet);
  if (isFault(sheet)) return sheet;
  for (let row = 0; row < block.rows; row += 1) {
    for (let column = 0; column < block.columns; column += 1) {
      change(cellToChange(sheet, block.row + row, block.column + column), row, column);
    }
  }
  return undefined;
}

function put(cell: MemoryCell, content: Content): void {
  if (content.kind === "keep") return;
  cell.value = content.kind === "value" ? content.value : "";
  cell.formula = content.kind === "formula" ? content.formula : "";
  if (content.format !== undefined) cell.format = content.format;
  if (content.style !== undefined) cell.style = content.style;
}

const setCells: Doing<"set-cells"> = (book, { block, contents }) =>
  eachCell(book, block, (cell, row, column) => {
    put(cell, contents[row]?.[column] ?? { kind: "keep" });
  });

const addSheet: Doing<"add-sheet"> = (book, { name }) => {
  if (book.isProtected) return fault("workbook-protected");
  if (sheetNamed(book, name)) return fault("name-taken", name);
  book.sheets.push(emptySheet(name));
  return undefined;
};

const addTable: Doing<"add-table"> = (book, { name, block }) => {
  const sheet = openSheet(book, block.sheet);
  if (isFault(sheet)) return sheet;
  if (isNameTaken(book, name)) return fault("name-taken", name);
  book.tables.push({ name, block, isFiltered: false, hasTotals: false });
  return undefined;
};

/** The new rows take the look and the words to choose from of the row above them. */
const growTable: Doing<"grow-table"> = (book, { name, block }) => {
  const table = tableNamed(book, name);
  if (!table) return fault("failed", name);
  const sheet = openSheet(book, table.block.sheet);
  if (isFault(sheet)) return sheet;
  const last = table.block.row + table.block.rows - 1;
  for (let row = last + 1; row < block.row + block.rows; row += 1) {
    for (let column = block.column; column < block.column + block.columns; column += 1) {
      const { format, style, words } = cellAt(sheet, last, column);
      Object.assign(cellToChange(sheet, row, column), { format, style, words });
    }
  }
  table.block = block;
  return undefined;
};

const steps: { [Kind in Step["do"]]: Doing<Kind> } = {
  "add-sheet": addSheet,
  "set-cells": setCells,
  "add-table": addTable,
  "grow-table": growTable,
  "set-width": (book, { sheet: name, column, characters }) => {
    const sheet = openSheet(book, name);
    if (isFault(sheet)) return sheet;
    sheet.widths[column] = characters;
    return undefined;
  },
  "freeze-rows": (book, { sheet: name, rows }) => {
    const sheet = openSheet(book, name);
    if (isFault(sheet)) return sheet;
    sheet.frozenRows = rows;
    return undefined;
  },
  "print-area": (book, { block, landscape, secondPage }) => {
    const sheet = openSheet(book, block.sheet);
    if (isFault(sheet)) return sheet;
    sheet.print = { block, landscape, ...(secondPage === undefined ? {} : { secondPage }) };
    return undefined;
  },
  "add-note": (book, { block, text }) => eachCell(book, block, (cell) => (cell.note = text)),
  "offer-words": (book, { block, words }) => eachCell(book, block, (cell) => (cell.words = words)),
  "add-chart": (book, chart) => {
    const sheet = openSheet(book, chart.sheet);
    if (isFault(sheet)) return sheet;
    sheet.charts.push(chart);
    return undefined;
  },
  // The selection is no part of the workbook: the host keeps it.
  select: (book, { block }) =>
    sheetNamed(book, block.sheet) ? undefined : fault("failed", block.sheet),
};

export const doStep = (book: MemoryBook, step: Step): Fault | undefined =>
  (steps[step.do] as Doing<typeof step.do>)(book, step as never);
