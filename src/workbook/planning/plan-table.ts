/** The plan of a first record: a sheet of its own, with the table and the record in it. */
import { areaName } from "../../sheet/cell-name";
import { type Block, fault, type Step, type Table } from "../../sheet/port";
import type { BookCell, BookSheet, BookTable } from "../../sheet/book";
import type { Column, RecordTable, TableShape } from "../tables/column";
import type { RowValue } from "../tables/row-values";
import { tableSheet } from "../tables/sheet";
import { cellAt } from "../../sheet/address";
import { finished } from "./finished";
import { isUsable } from "./logbook/column-formula";
import type { Plan, PlannedCell, Refusal, Remark } from "./plan";
import { plannedCell } from "./planned-cell";
import { rowWords } from "./record/row-words";
import { refusal } from "./refusal";
import { remarkWords } from "./remark-wording";
import { sheetSteps, tableBlock } from "./sheet-steps";
import type { Snapshot } from "./snapshot";

const isSame = (one: string, other: string): boolean => one.toLowerCase() === other.toLowerCase();

/** The name, or the first of "Titrations 2", "Titrations 3" that no sheet has. */
export function freeSheetName({ sheets }: Pick<Snapshot, "sheets">, name: string): string {
  const isTaken = (wanted: string): boolean => sheets.sheets.some((s) => isSame(s.name, wanted));
  if (!isTaken(name)) return name;
  let number = 2;
  while (isTaken(`${name} ${String(number)}`)) number += 1;
  return `${name} ${String(number)}`;
}

/** Why no table of this name can be made, on a sheet of its own. */
export function hindrance(
  { sheets, names }: Pick<Snapshot, "sheets" | "names">,
  { name }: Pick<TableShape, "name">,
): Refusal | undefined {
  const isTaken = [...names.tables, ...names.defined].some((each) => isSame(each, name));
  if (isTaken) return refusal(fault("name-taken", name));
  return sheets.isProtected ? refusal(fault("workbook-protected")) : undefined;
}

const offers = (shape: TableShape, row: Block): Step[] =>
  shape.columns.flatMap(({ choices }, column) =>
    choices === undefined
      ? []
      : [{ do: "offer-words", block: cellAt(row.sheet, row.row, column), words: choices } as const],
  );

function cellOf(row: Block, cell: BookCell, column: Column, place: number): PlannedCell {
  const block = cellAt(row.sheet, row.row, place);
  const content =
    cell.formula === undefined
      ? ({ kind: "value", value: cell.value ?? "" } as const)
      : ({ kind: "formula", formula: cell.formula } as const);
  return plannedCell({ block, heading: column.heading, content, format: column.format });
}

/** Only the cells that get something: an empty one of a new sheet stays as it is. */
function plannedCells(sheet: BookSheet, shape: TableShape, row: Block): PlannedCell[] {
  return (sheet.rows[row.row] ?? []).flatMap((cell, place) => {
    const column = shape.columns[place];
    const isFilled = cell !== null && (cell.value !== undefined || cell.formula !== undefined);
    return column && isFilled ? [cellOf(row, cell, column, place)] : [];
  });
}

function makes(sheet: BookSheet, shape: TableShape, headings: Block): string[] {
  const offered = shape.columns.filter(({ choices }) => choices).map((c) => c.heading);
  return [
    `A new sheet ${sheet.name}, with a title and a line of guidance in A1 and A2.`,
    `The table ${shape.name}: ${String(headings.columns)} headings in ${areaName({ ...headings, rows: 1 })}, each with a note.`,
    `Words to choose from under ${offered.join(", ")}; others may be typed as well.`,
    "Column widths and number formats; the rows down to the headings stay in view.",
  ];
}

const aboutName = (wanted: string, used: string): Remark[] =>
  used === wanted
    ? []
    : [
        {
          sentence: remarkWords.otherSheetName(wanted, used),
        },
      ];

/** Columns whose formula names a column that another table of the workbook lacks. */
function withoutMeans(shape: TableShape, others: readonly Table[]): string[] {
  const headings = shape.columns.map(({ heading }) => heading);
  return shape.columns
    .filter(({ formula }) => formula !== undefined && !isUsable(formula, headings, shape, others))
    .map(({ heading }) => heading);
}

const without = (shape: RecordTable, idle: readonly string[]): TableShape => ({
  ...shape,
  columns: shape.columns.map(({ formula, ...column }) =>
    formula === undefined || idle.includes(column.heading) ? column : { ...column, formula },
  ),
});

export function planTable(
  snapshot: Snapshot,
  shape: RecordTable,
  values: readonly RowValue[],
): Plan | Refusal {
  const stopped = hindrance(snapshot, shape);
  if (stopped) return stopped;
  const idle = withoutMeans(shape, snapshot.others);
  const name = freeSheetName(snapshot, shape.name);
  const entry = Object.fromEntries(values.map(({ heading, value }) => [heading, value]));
  const sheet = { ...tableSheet(without(shape, idle), [entry]), name };
  const [table] = sheet.tables as [BookTable];
  const block = tableBlock(sheet, table);
  const row: Block = { ...block, row: block.row + 1, rows: 1 };
  return finished({
    ...rowWords(shape, row),
    summary: `A new sheet ${name} with the table ${shape.name}; the ${shape.what} is its first row, row ${String(row.row + 1)}.`,
    cells: plannedCells(sheet, shape, row),
    makes: makes(sheet, shape, block),
    remarks: [
      ...aboutName(shape.name, name),
      ...idle.map(
        (heading) => ({ code: "no-formula", sentence: remarkWords.otherOrder(heading) }) as const,
      ),
    ],
    block: row,
    table: shape.name,
    steps: [...sheetSteps(sheet, table), ...offers(shape, row), { do: "select", block: row }],
  });
}
