/** Calls of every function laid out on sheets, each beside its plain-formula twin. */
import { columnLetters } from "../../../src/sheet/cell-name";
import type { WorksheetFunction } from "../../../src/functions/define";
import type { TwinAnswer, TwinArgument } from "../../../src/functions/twin";
import { twinOf } from "../../../src/partner/twins/twins";
import type { RawCell } from "./raw-book";

/** An argument as cells of the sheet, or written into the formula; undefined is left out. */
export type Given =
  | { readonly cells: readonly (readonly RawCell[])[] }
  | { readonly literal: string | number | boolean }
  | { readonly constants: readonly (readonly (string | number | boolean)[])[] }
  | undefined;

export interface Written {
  readonly given: readonly Given[];
  readonly answer: TwinAnswer;
  /** The first cell of the answer. */
  readonly row: number;
  /** Every formula, the helpers' too, for whoever looks for what does not belong. */
  readonly formulas: readonly string[];
}

export interface Sheets {
  readonly written: readonly Written[];
  readonly cells: RawCell[][];
  readonly helpers: RawCell[][];
}

/** Where answers stand: right of all arguments. */
export const answerColumn = 45;

const literalText = (value: string | number | boolean): string =>
  typeof value === "string" ? `"${value.replaceAll('"', '""')}"` : String(value).toUpperCase();

const literal = (value: string | number | boolean): TwinArgument => {
  const text = literalText(value);
  return { text, rows: 1, columns: 1, cell: () => text };
};

/** {2.4,2.5;"",2.45} */
const arrayConstant = (
  rows: readonly (readonly (string | number | boolean)[])[],
): TwinArgument => ({
  text: `{${rows.map((row) => row.map(literalText).join(",")).join(";")}}`,
  rows: rows.length,
  columns: rows[0]?.length ?? 0,
  cell: (row, column) => literalText(rows[row]?.[column] ?? ""),
});

const cellAt = (row: number, column: number): string => `${columnLetters(column)}${row + 1}`;

function put(cells: RawCell[][], row: number, column: number, value: RawCell): void {
  while (cells.length <= row) cells.push([]);
  const line = cells[row] as RawCell[];
  while (line.length <= column) line.push(null);
  line[column] = value;
}

/** The sheet of one function: each call below the one before. */
export function write(entry: WorksheetFunction, calls: readonly (readonly Given[])[]): Sheets {
  const cells: RawCell[][] = [];
  const helpers: RawCell[][] = [];
  const helperSheet = `H${entry.id}`;
  const twin = twinOf(entry.id);
  if (!twin) throw new Error(`${entry.id} has no twin`);
  let row = 0;

  const written = calls.map((given): Written => {
    const formulas: string[] = [];
    const known = new Map<string, string>();
    let column = 0;
    let height = 1;
    const placed = given.map((each): TwinArgument | undefined => {
      if (!each) return undefined;
      if ("literal" in each) return literal(each.literal);
      if ("constants" in each) return arrayConstant(each.constants);
      const [top, left] = [row, column];
      const rows = each.cells.length;
      const columns = each.cells[0]?.length ?? 0;
      each.cells.forEach((line, down) => {
        line.forEach((value, across) => put(cells, top + down, left + across, value));
      });
      column += columns;
      height = Math.max(height, rows);
      if (column > answerColumn) throw new Error("the arguments are too wide for the sheet");
      const at = (down: number, across: number) =>
        `${entry.id}!$${columnLetters(left + across)}$${top + down + 1}`;
      const last = cellAt(top + rows - 1, left + columns - 1);
      const text = rows * columns === 1 ? at(0, 0) : `${at(0, 0)}:${last}`;
      return { text, rows, columns, cell: at };
    });

    const addHelper = (formula: string): string => {
      formulas.push(formula);
      put(helpers, helpers.length, 0, { formula });
      return `${helperSheet}!A${helpers.length}`;
    };
    const answer = twin({
      argument: (name) => placed[entry.arguments.findIndex((each) => each.name === name)],
      helper(_, formula) {
        const cell = known.get(formula) ?? addHelper(formula);
        known.set(formula, cell);
        return cell;
      },
      helperColumn(_, column) {
        const at = column.map(addHelper);
        const text = `${at[0] ?? ""}:A${helpers.length}`;
        return { text, rows: column.length, columns: 1, cell: (down) => at[down] ?? "" };
      },
    });
    const table =
      answer.kind === "formula"
        ? [[answer.formula]]
        : answer.kind === "table"
          ? answer.formulas
          : [];
    table.forEach((line, down) => {
      line.forEach((formula, across) => {
        if (formula === undefined) return;
        formulas.push(formula);
        put(cells, row + down, answerColumn + across, { formula });
      });
    });
    const start = row;
    row += Math.max(height, table.length);
    return { given, answer, row: start, formulas };
  });
  return { written, cells, helpers };
}
