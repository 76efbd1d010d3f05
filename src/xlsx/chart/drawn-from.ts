/** A chart of a book of our own, with the figures its cells hold or come to. */
import type { Block, CellPlace } from "../../sheet/area";
import type { Book, BookChart, BookResult, BookSheet } from "../../sheet/book";
import type { Chart, ChartFigures } from "./chart";

/** The answer, in a place, of a formula that stands further up or left and answers over more cells. */
function spilledAt({ rows }: BookSheet, row: number, column: number): BookResult | undefined {
  for (let up = 0; up <= row; up++) {
    for (let left = 0; left <= column; left++) {
      const found = rows[row - up]?.[column - left]?.results?.[up]?.[left];
      if (found !== undefined) return found;
    }
  }
  return undefined;
}

function valueAt(book: Book, { sheet, row, column }: CellPlace): BookResult | undefined {
  const found = book.sheets.find(({ name }) => name === sheet);
  return found && (spilledAt(found, row, column) ?? found.rows[row]?.[column]?.value);
}

function figuresIn(book: Book, { sheet, ...area }: Block): ChartFigures {
  const figures = Array.from({ length: area.rows * area.columns }, (_, place) => {
    const row = area.row + Math.floor(place / area.columns);
    const value = valueAt(book, { sheet, row, column: area.column + (place % area.columns) });
    return typeof value === "number" ? value : undefined;
  });
  return { sheet, area, figures };
}

export function drawnFrom(book: Book, { series, ...chart }: BookChart): Chart {
  return {
    ...chart,
    series: series.map(({ name, across, up }) => {
      const value = valueAt(book, name);
      const text = typeof value === "object" || value === undefined ? "" : String(value);
      const area = { row: name.row, column: name.column, rows: 1, columns: 1 };
      const titled = { sheet: name.sheet, area, text };
      return { name: titled, across: figuresIn(book, across), up: figuresIn(book, up) };
    }),
  };
}
