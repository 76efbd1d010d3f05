/** What of an open workbook must stay as its file has it. */
import type { Area, Sheet } from "../../xlsx";
import type { FileFacts } from "../../host/workbench/file-facts";
import type { GridState, SheetState } from "../file/grid-state";
import type { TableState } from "../file/tables-in-grid";
import { keyOf, type OpenedFile } from "../file/opened-file";
import type { Fixed } from "./guard";

const isWithin = ({ row, column, rows, columns }: Area, at: number, across: number): boolean =>
  row <= at && at < row + rows && column <= across && across < column + columns;

const headingReason = ({ name }: TableState): string =>
  `Headings of the table ${name} stay as they are: formulas go by them. A new table can have others.`;

/** Cells open to change on a protected sheet. */
function openCells(sheet: Sheet, file: OpenedFile): ReadonlySet<string> {
  const open = sheet.cells.filter(({ look }) => file.looks[look]?.isUnlocked === true);
  return new Set(open.map(({ row, column }) => keyOf(row, column)));
}

export type CellRule = (row: number, column: number) => string | undefined;

const noRule: CellRule = () => undefined;

/** Rules that only a file has: protection, and array formulas over fixed cells. */
function fileRule({ name, isProtected, cells }: Sheet, open: ReadonlySet<string>): CellRule {
  const arrays = cells.flatMap(({ array }) =>
    array && !array.isDynamic && array.rows * array.columns > 1 ? [array] : [],
  );
  const whatIf = new Set(
    cells.filter((cell) => cell.isWhatIf).map(({ row, column }) => keyOf(row, column)),
  );
  return (row, column) => {
    if (whatIf.has(keyOf(row, column))) {
      return "This cell is part of a what-if table of the spreadsheet program: change it there.";
    }
    if (isProtected && !open.has(keyOf(row, column))) {
      return `The sheet ${name} is protected: its cells take no changes.`;
    }
    const isPart = arrays.some(
      (array) => isWithin(array, row, column) && (row !== array.row || column !== array.column),
    );
    return isPart ? "This cell is part of an array formula: change its first cell." : undefined;
  };
}

function tableRule({ tables }: SheetState): CellRule {
  return (row, column) => {
    const table = tables.find((each) => row === each.row && isWithin(each, row, column));
    return table && headingReason(table);
  };
}

export const factsOf = (file: OpenedFile): FileFacts => ({
  isLocked: file.isProtected,
  protectedSheets: new Set(
    file.sheets.filter(({ isProtected }) => isProtected).map(({ name }) => name),
  ),
  withTotals: new Set(
    file.sheets.flatMap(({ tables }) =>
      tables.filter(({ hasTotals, isFed }) => hasTotals || isFed).map(({ name }) => name),
    ),
  ),
});

/** What a file says of its cells, kept without the cells themselves. */
export const fileRules = (file: OpenedFile): ReadonlyMap<string, CellRule> =>
  new Map(
    file.sheets.map((sheet) => [
      sheet.name,
      fileRule(sheet, sheet.isProtected ? openCells(sheet, file) : new Set()),
    ]),
  );

/** @param rules those of the file; the sample has none */
export function fixedBy(
  state: GridState,
  facts: FileFacts,
  rules: ReadonlyMap<string, CellRule> = new Map(),
): Fixed {
  const all = new Map(
    state.sheets.map((sheet) => {
      const ofFile = rules.get(sheet.name) ?? noRule;
      const ofTables = tableRule(sheet);
      const rule: CellRule = (row, column) => ofFile(row, column) ?? ofTables(row, column);
      return [sheet.name, rule];
    }),
  );
  const frozen = state.sheets.filter(
    ({ frozenRows, frozenColumns }) => frozenRows + frozenColumns > 0,
  );
  return {
    ...facts,
    sheets: new Set(all.keys()),
    frozen: new Set(frozen.map(({ name }) => name)),
    names: new Set(state.names.keys()),
    refusesCell: (sheet, row, column) => all.get(sheet)?.(row, column),
  };
}
