/** The checked inputs and answers, laid out as a workbook: inputs on one sheet, formulas on another. */
import type { Book, BookCell } from "../../src/sheet/book";
import type { Vector } from "../vectors";

/** Rows kept free for each vector: more than any of them spills or needs. */
export const rowsEach = 24;

const letters = (column: number): string =>
  (column >= 26 ? letters(Math.floor(column / 26) - 1) : "") +
  String.fromCharCode(65 + (column % 26));

/** A cell that holds this value: an error and "" come from formulas, as they do in use. */
function inputCell(value: unknown): BookCell | null {
  if (value === null) return null;
  if (value === "") return { formula: '=""' };
  if (typeof value === "object") return { formula: "=1/0" };
  return { value: value as string | number | boolean };
}

interface Layout {
  readonly inputs: (BookCell | null)[][];
  readonly answers: (BookCell | null)[][];
}

/** Writes one argument into cells; answers the reference to them. Null alone is left out. */
function place(layout: Layout, argument: unknown, row: number, column: number): string {
  if (argument === null) return "";
  const rows = Array.isArray(argument) ? (argument as unknown[][]) : [[argument]];
  for (const [down, cells] of rows.entries()) {
    const line = (layout.inputs[row + down] ??= []);
    for (const [across, value] of cells.entries()) line[column + across] = inputCell(value);
  }
  const width = Math.max(...rows.map((cells) => cells.length));
  const last = `${letters(column + width - 1)}${row + rows.length}`;
  const first = `${letters(column)}${row + 1}`;
  return first === last ? `Inputs!${first}` : `Inputs!${first}:${last}`;
}

const columnsEach = 22;

export function vectorBook(cases: readonly Vector[]): Book {
  const layout: Layout = { inputs: [], answers: [] };
  for (const [index, { fn, args }] of cases.entries()) {
    const row = index * rowsEach;
    const references = args.map((argument, position) =>
      place(layout, argument, row, position * columnsEach),
    );
    layout.answers[row] = [{ formula: `=TITRE.${fn}(${references.join(",")})` }];
  }
  const filled = (rows: (BookCell | null)[][]) =>
    Array.from(rows, (row) => Array.from(row ?? [], (cell) => cell ?? null));
  const sheet = (name: string, rows: (BookCell | null)[][]) => ({
    name,
    rows: filled(rows),
    columnWidths: [],
    tables: [],
    frozenRows: 0,
  });
  return {
    name: "vectors",
    sheets: [sheet("Inputs", layout.inputs), sheet("Answers", layout.answers)],
  };
}

const constant = (value: unknown): string =>
  typeof value === "string" ? `"${value}"` : String(value).toUpperCase();

/** Values that can stand in a formula as they are: no empty cells, no errors. */
export const isConstant = ({ args }: Vector): boolean =>
  args.every(
    (argument) =>
      argument === null ||
      [argument].flat(2).every((value) => value !== null && typeof value !== "object"),
  );

/** The same call with every figure written into the formula. */
export function constantFormula({ fn, args }: Vector): string {
  const written = args.map((argument) => {
    if (argument === null) return "";
    if (!Array.isArray(argument)) return constant(argument);
    const rows = (argument as unknown[][]).map((cells) => cells.map(constant).join(","));
    return `{${rows.join(";")}}`;
  });
  return `=TITRE.${fn}(${written.join(",")})`;
}
