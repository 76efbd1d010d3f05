/** The rows a table of ours takes in when somebody typed or pasted right below it: its formulas go on. */
import type { Content, Step } from "../../sheet/port";
import { titreIdOf } from "../../sheet/formula/names";
import { tokensOf } from "../../sheet/formula/token";
import { batches } from "../tables/batches";
import type { TableShape } from "../tables/column";
import { titrants } from "../tables/titrants";
import { titrations } from "../tables/titrations";
import { otherColumnFormula, ourColumnFormula } from "./logbook/column-formula";
import { isHeading } from "./headings";
import { filledDown } from "../../xlsx/formulas/shared";
import { isEmpty, type Logbook, readCell } from "./snapshot";

const shapeOf = (name: string): TableShape | undefined =>
  [titrations, batches, titrants].find((shape) => shape.name.toLowerCase() === name.toLowerCase());

const callsOurs = (formula: string): boolean =>
  formula !== "" &&
  tokensOf(formula).some(({ kind, text }) => kind === "function" && titreIdOf(text) !== undefined);

/** One of ours by its name, or one whose last row calls our functions. */
export function isTableOfOurs(logbook: Logbook): boolean {
  const { name, headings, block } = logbook.table;
  return (
    shapeOf(name) !== undefined ||
    headings.some((_, column) => callsOurs(readCell(logbook, block.rows - 1, column).formula))
  );
}

/** In a table of one row nothing tells a column's formula from a reading, but that it names its row. */
const namesItsRow = (formula: string): boolean => /\[#This Row\]|\[@/i.test(formula);

/** As it reads in the first row below the table. */
function formulaFor(logbook: Logbook, column: number): string | undefined {
  const { name, headings, block } = logbook.table;
  const shape = shapeOf(name);
  const ours = shape?.columns.find((each) => isHeading(each.heading, headings[column] ?? ""));
  if (shape && ours?.formula !== undefined) {
    const found = ourColumnFormula(logbook, block.rows, column, ours, shape);
    return found.kind === "formula" ? found.formula : undefined;
  }
  const formula = otherColumnFormula(logbook, block.rows, column);
  if (formula === undefined) return undefined;
  return block.rows > 2 || namesItsRow(formula) ? formula : undefined;
}

const isBlank = (logbook: Logbook, row: number): boolean =>
  logbook.table.headings.every((_, column) => isEmpty(readCell(logbook, row, column)));

/**
 * The steps that take in the rows from the table's end down to the last that was written, as far as
 * none between is blank. None when the first is blank, or when a row of totals or another table follows.
 * @param until the sheet's last row that was written
 */
export function grownRows(logbook: Logbook, until: number): Step[] {
  const { table, cells, others } = logbook;
  const { block, headings } = table;
  if (table.hasTotals) return [];
  const isTaken = (row: number): boolean =>
    others.some(
      ({ block: other }) =>
        other.sheet === block.sheet &&
        other.row <= block.row + row &&
        block.row + row < other.row + other.rows &&
        other.column < block.column + block.columns &&
        block.column < other.column + other.columns,
    );
  let end = block.rows;
  while (end < cells.block.rows && block.row + end <= until) {
    if (isBlank(logbook, end) || isTaken(end)) break;
    end += 1;
  }
  if (end === block.rows) return [];
  const formulas = headings.map((_, column) => formulaFor(logbook, column));
  const contents = Array.from({ length: end - block.rows }, (_, down): Content[] =>
    headings.map((__, column): Content => {
      const row = block.rows + down;
      if (!isEmpty(readCell(logbook, row, column))) return { kind: "keep" };
      const formula = formulas[column];
      if (formula === undefined) return { kind: "keep" };
      return { kind: "formula", formula: filledDown(formula, down) };
    }),
  );
  const added = { ...block, row: block.row + block.rows, rows: contents.length };
  return [
    { do: "grow-table", name: table.name, block: { ...block, rows: end } },
    { do: "set-cells", block: added, contents },
  ];
}
