/** What the embedded spreadsheet answers to each question. */
import { type Injector, ObjectMatrix } from "@univerjs/core";
import { IDefinedNamesService } from "@univerjs/engine-formula";
import { SheetsSelectionsService, WorksheetProtectionRuleModel } from "@univerjs/sheets";
import { TableManager } from "@univerjs/sheets-table";
import type { WorkbookCells } from "../../workbench/engine/workbook-cells";
import type { Block, CellContent, Cells, Found, Question } from "../../sheet/port";
import type { FileFacts } from "./file-facts";

const nothing: Found = { kind: "nothing" };

type Area = { startRow: number; startColumn: number; endRow: number; endColumn: number };

const blockOf = (sheet: string, area: Area): Block => ({
  sheet,
  row: area.startRow,
  column: area.startColumn,
  rows: area.endRow - area.startRow + 1,
  columns: area.endColumn - area.startColumn + 1,
});

function content(cells: WorkbookCells, sheet: string, row: number, column: number): CellContent {
  const value = cells.value({ sheet, row, column });
  if (value === null) return "";
  return typeof value === "object" ? { error: value.basicValue } : value;
}

function each<T>(
  { sheet, row, column, rows, columns }: Block,
  find: (place: { sheet: string; row: number; column: number }) => T,
): T[][] {
  return Array.from({ length: rows }, (_, down) =>
    Array.from({ length: columns }, (__, across) =>
      find({ sheet, row: row + down, column: column + across }),
    ),
  );
}

function cellsIn(cells: WorkbookCells, block: Block): Found {
  if (!cells.names.sheet(block.sheet)) return nothing;
  const found: Cells = {
    kind: "cells",
    block,
    values: each(block, ({ sheet, row, column }) => content(cells, sheet, row, column)),
    formulas: each(block, (place) => cells.formula(place)),
    formats: each(block, (place) => cells.format(place) ?? "General"),
  };
  return found;
}

const valuesIn = (cells: WorkbookCells, block: Block): Found =>
  cells.names.sheet(block.sheet)
    ? {
        kind: "values",
        block,
        values: each(block, ({ sheet, row, column }) => content(cells, sheet, row, column)),
      }
    : nothing;

/** A table by its name, in any case. */
export function tableNamed(injector: Injector, cells: WorkbookCells, name: string) {
  const wanted = name.toLowerCase();
  return injector
    .get(TableManager)
    .getTableList(cells.names.unit)
    .find((table) => table.name.toLowerCase() === wanted);
}

function tableAnswer(
  injector: Injector,
  cells: WorkbookCells,
  name: string,
  facts: FileFacts,
): Found {
  const table = tableNamed(injector, cells, name);
  const sheet = table && cells.names.workbook.getSheetBySheetId(table.subUnitId)?.getName();
  if (!table || sheet === undefined) return nothing;
  const block = blockOf(sheet, table.range);
  const { row, column, columns } = block;
  return {
    kind: "table",
    name: table.name,
    block,
    headings: Array.from({ length: columns }, (_, at) =>
      String(cells.value({ sheet, row, column: column + at }) ?? ""),
    ),
    isFiltered: false,
    hasTotals: facts.withTotals.has(table.name),
  };
}

function usedBlock(cells: WorkbookCells, name: string): Block | undefined {
  const matrix = cells.names.sheet(name)?.getCellMatrix();
  if (!matrix) return undefined;
  let used: Area | undefined;
  new ObjectMatrix(matrix.getMatrix()).forValue((row, column) => {
    const isEmpty =
      cells.value({ sheet: name, row, column }) === null &&
      cells.formula({ sheet: name, row, column }) === "";
    if (isEmpty) return;
    used = {
      startRow: Math.min(used?.startRow ?? row, row),
      startColumn: Math.min(used?.startColumn ?? column, column),
      endRow: Math.max(used?.endRow ?? row, row),
      endColumn: Math.max(used?.endColumn ?? column, column),
    };
  });
  return used && blockOf(name, used);
}

/** Each cell a block of its own. */
function errorsOn(cells: WorkbookCells, sheet: string): Found {
  if (!cells.names.sheet(sheet)) return nothing;
  const used = usedBlock(cells, sheet);
  const places = used ? each(used, (place) => place).flat() : [];
  const isError = (place: (typeof places)[number]): boolean =>
    cells.formula(place) !== "" &&
    typeof content(cells, place.sheet, place.row, place.column) === "object";
  return {
    kind: "areas",
    blocks: places.filter(isError).map((place) => ({ ...place, rows: 1, columns: 1 })),
  };
}

export function answer(
  injector: Injector,
  cells: WorkbookCells,
  question: Question,
  facts: FileFacts,
): Found {
  const { names } = cells;
  switch (question.ask) {
    case "cells":
      return cellsIn(cells, question.block);
    case "values":
      return valuesIn(cells, question.block);
    case "errors":
      return errorsOn(cells, question.sheet);
    case "table":
      return tableAnswer(injector, cells, question.name, facts);
    case "sheets":
      return {
        kind: "sheets",
        isProtected: facts.isLocked,
        sheets: names.sheets.map((name) => ({
          name,
          isProtected:
            facts.protectedSheets.has(name) ||
            injector.get(WorksheetProtectionRuleModel).getRule(names.unit, names.sheetId(name)) !==
              undefined,
          used: usedBlock(cells, name),
        })),
      };
    case "names":
      return {
        kind: "names",
        tables: injector
          .get(TableManager)
          .getTableList(names.unit)
          .map((table) => table.name),
        defined: Object.values(
          injector.get(IDefinedNamesService).getDefinedNameMap(names.unit) ?? {},
        ).map(({ name }) => name),
      };
    case "selection": {
      const active = injector.get(SheetsSelectionsService).getCurrentLastSelection()?.primary;
      if (!active) return nothing;
      const place = { row: active.actualRow, column: active.actualColumn, rows: 1, columns: 1 };
      return cellsIn(cells, { sheet: names.workbook.getActiveSheet().getName(), ...place });
    }
  }
}
