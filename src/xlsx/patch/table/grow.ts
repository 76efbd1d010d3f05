/** Columns and rows added to a table, where nothing else stands. */
import { areaName } from "../../../sheet/cell-name";
import { isOnSheet, named, overlaps } from "../../cell-address";
import { storedOn } from "../call-form";
import type { Area } from "../../../sheet/area";
import { refuse } from "../../problem";
import type { TableTrouble } from "../../sentences";
import type { TableDraft } from "../sheet-draft";
import type { AddColumn, AddRows, Content, Dress, NewValue } from "../edits";
import type { CellPlanner } from "../plan-cell";
import { isFilling } from "../wanted";

const longestHeading = 255;

function refuseArea(table: TableDraft, area: Area, trouble: TableTrouble): never {
  return refuse({ code: "table-area", table: table.name, area: areaName(area), trouble });
}

/** Another table, or merged cells, in the way of a table. */
export function refuseOverlap(table: TableDraft, area: Area): void {
  const { sheet } = table;
  if (area.rows < 1 || area.columns < 1) refuseArea(table, area, "too-small");
  const others = sheet.tables.filter((each) => each !== table);
  if (others.some((other) => overlaps(other.area, area))) refuseArea(table, area, "overlaps-table");
  if (sheet.hasMergedIn(area)) refuseArea(table, area, "merged");
}

/** ... or a cell that holds anything. */
function refuseOccupied(table: TableDraft, area: Area): void {
  const { sheet } = table;
  if (!isOnSheet(area.row + area.rows - 1, area.column + area.columns - 1)) {
    refuse({ code: "outside-sheet", cell: named(sheet.name, area.row, area.column) });
  }
  refuseOverlap(table, area);
  const held = sheet.cellsIn(area).find((cell) => {
    const isVacant = cell.value === undefined && cell.formula === undefined;
    return !isVacant && sheet.wanted.get(cell)?.plan.kind !== "nothing";
  });
  const taken = held ?? sheet.wanted.within(area).find(isFilling);
  if (!taken) return;
  const cell = named(sheet.name, taken.row, taken.column);
  refuse({ code: "not-empty", cell, wanted: `the table ${table.name}` });
}

export function refuseHeading(table: TableDraft, heading: string): void {
  const about = { code: "bad-heading", table: table.name, heading } as const;
  if (heading.trim() === "") refuse({ ...about, trouble: "empty" });
  if (heading.length > longestHeading) refuse({ ...about, trouble: "too-long" });
  const isThere = table.columns.some(
    (column) => column.heading.toLowerCase() === heading.toLowerCase(),
  );
  if (isThere) refuse({ ...about, trouble: "repeated" });
}

function refuseFixed(table: TableDraft): void {
  const { before, area } = table;
  if (before?.isFed) refuseArea(table, area, "filled-from-outside");
  if (before && !before.hasHeadings) refuseArea(table, area, "no-headings");
}

const bodyRows = (table: TableDraft): number => table.area.rows - 1 - (table.hasTotals ? 1 : 0);

const isDate = (value: NewValue | undefined): boolean =>
  typeof value === "object" && "date" in value;

/** A column of its own format, not that of the column beside it, whose other looks it takes. */
function bodyDress({ format, look, cells }: AddColumn): Dress {
  const usual = cells.some(isDate) ? "yyyy-mm-dd" : "General";
  return { format: format ?? usual, ...(look === undefined ? {} : { look }) };
}

function contentOf({ formula }: AddColumn, value: NewValue): Content {
  if (formula === undefined) return { kind: "value", value };
  const isResult = typeof value !== "object" || "error" in value;
  return { kind: "formula", formula, result: isResult ? value : 0 };
}

export function addColumn(table: TableDraft, edit: AddColumn, planner: CellPlanner): void {
  refuseFixed(table);
  const { area, sheet } = table;
  const column = area.column + area.columns;
  const needed = bodyRows(table);
  if (edit.cells.length !== needed) {
    refuse({ code: "bad-length", table: table.name, given: edit.cells.length, needed });
  }
  refuseHeading(table, edit.heading);
  refuseOccupied(table, { ...area, column, columns: 1 });
  const cell = named(sheet.name, area.row + 1, column);
  if (edit.formula !== undefined) {
    const formula = storedOn(sheet, edit.formula, cell, table.name);
    table.formulas.set(edit.heading.toLowerCase(), formula);
  }
  table.area = { ...area, columns: area.columns + 1 };
  const beside = (row: number) =>
    sheet.wanted.get({ row, column: column - 1 })?.base ?? sheet.lookAt(row, column - 1);
  const heading: Content = { kind: "value", value: edit.heading };
  planner.plan({ row: area.row, column, content: heading, base: beside(area.row) });
  const dress = bodyDress(edit);
  for (const [index, value] of edit.cells.entries()) {
    const row = area.row + 1 + index;
    planner.plan({ row, column, content: contentOf(edit, value), base: beside(row), ...dress });
  }
}

/** Column formulas by heading, as files hold them. */
export function takeFormulas(
  table: TableDraft,
  formulas: Readonly<Record<string, string>> | undefined,
): void {
  const cell = named(table.sheet.name, table.area.row, table.area.column);
  for (const [heading, formula] of Object.entries(formulas ?? {})) {
    table.formulas.set(heading.toLowerCase(), storedOn(table.sheet, formula, cell, table.name));
  }
}

export function growTable(table: TableDraft, area: Area, formulas?: Record<string, string>): void {
  refuseFixed(table);
  const { row, column, rows, columns } = table.area;
  if (area.row !== row || area.column !== column) refuseArea(table, area, "moved");
  if (area.rows < rows || area.columns < columns) refuseArea(table, area, "smaller");
  if (table.hasTotals && area.rows > rows) refuseArea(table, area, "has-totals");
  const last = named(table.sheet.name, row + area.rows - 1, column + area.columns - 1);
  if (!isOnSheet(row + area.rows - 1, column + area.columns - 1)) {
    refuse({ code: "outside-sheet", cell: last });
  }
  refuseOverlap(table, area);
  table.area = area;
  takeFormulas(table, formulas);
}

export function addRows(table: TableDraft, edit: AddRows, planner: CellPlanner): void {
  refuseFixed(table);
  const { area, sheet } = table;
  if (table.hasTotals) refuseArea(table, area, "has-totals");
  const short = edit.rows.find((row) => row.length !== area.columns);
  if (short) {
    const given = short.length;
    refuse({ code: "bad-length", table: table.name, given, needed: area.columns });
  }
  if (edit.rows.length === 0) return;
  const first = area.row + area.rows;
  refuseOccupied(table, { ...area, row: first, rows: edit.rows.length });
  table.area = { ...area, rows: area.rows + edit.rows.length };
  const last = (table.before?.area.row ?? area.row) + (table.before?.area.rows ?? area.rows) - 1;
  for (const [down, row] of edit.rows.entries()) {
    for (const [across, { format, look, ...content }] of row.entries()) {
      const column = area.column + across;
      planner.plan({
        row: first + down,
        column,
        content,
        base: sheet.lookAt(last, column),
        ...(format === undefined ? {} : { format }),
        ...(look === undefined ? {} : { look }),
      });
    }
  }
}
