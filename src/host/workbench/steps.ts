/** Each step as the engine's own commands. */
import type { ICellData, Injector } from "@univerjs/core";
import {
  InsertSheetCommand,
  SetColWidthCommand,
  SetFrozenCommand,
  SetRangeValuesCommand,
  SetSelectionsOperation,
  SetWorksheetActivateCommand,
} from "@univerjs/sheets";
import {
  AddSheetTableMutation,
  DeleteSheetTableMutation,
  SetSheetTableCommand,
} from "@univerjs/sheets-table";
import type { WorkbookCells } from "../../workbench/engine/workbook-cells";
import { columnWidth, tableThemeName } from "../../workbench/look";
import { type Block, type Fault, fault, type Step } from "../../sheet/port";
import { tableNamed } from "./answers";
import { cellsSet } from "./cell-data";
import { likeAbove } from "./like-above";
import type { Command } from "./one-change";
import { roomFor } from "./room";

const rangeOf = ({ row, column, rows, columns }: Block) => ({
  startRow: row,
  startColumn: column,
  endRow: row + rows - 1,
  endColumn: column + columns - 1,
});

/** Room for our widest table; what lies beyond the last column means nothing to a formula. */
const newSheet = { rowCount: 1000, columnCount: 60 };

let named = 0;

/** What hangs on a cell has a name, by which it is known when rows change places. */
const newName = (): string => `new-${String((named += 1))}`;

/** The commands of a step, or why it cannot be done. */
export function commandsFor(
  injector: Injector,
  cells: WorkbookCells,
  step: Step,
): readonly Command[] | Fault {
  const { names } = cells;
  const unitId = names.unit;
  const on = (sheet: string) => ({ unitId, subUnitId: names.sheetId(sheet) });
  const values = (block: Block, value: ICellData[][]): readonly Command[] | Fault =>
    names.sheet(block.sheet)
      ? [
          ...roomFor(cells, block),
          {
            id: SetRangeValuesCommand.id,
            params: { ...on(block.sheet), range: rangeOf(block), value },
          },
        ]
      : fault("failed", block.sheet);
  const everyCell = (block: Block, custom: () => Record<string, unknown>) =>
    values(
      block,
      Array.from({ length: block.rows }, (_, row) =>
        Array.from({ length: block.columns }, (__, column) => ({
          custom: { ...cellCustom(cells, block, row, column), ...custom() },
        })),
      ),
    );
  switch (step.do) {
    case "add-sheet":
      return names.sheet(step.name)
        ? fault("name-taken", step.name)
        : [
            {
              id: InsertSheetCommand.id,
              params: { unitId, sheet: { id: step.name, name: step.name, ...newSheet } },
            },
          ];
    case "set-cells":
      return names.sheet(step.block.sheet)
        ? [
            ...roomFor(cells, step.block),
            ...cellsSet(step.block, step.contents).map((value) => ({
              id: SetRangeValuesCommand.id,
              params: { ...on(step.block.sheet), range: rangeOf(step.block), value },
            })),
          ]
        : fault("failed", step.block.sheet);
    case "add-table":
      return tableNamed(injector, cells, step.name)
        ? fault("name-taken", step.name)
        : [
            {
              // the command would refuse the name of a sheet
              id: AddSheetTableMutation.id,
              params: {
                ...on(step.block.sheet),
                tableId: step.name,
                name: step.name,
                range: rangeOf(step.block),
                options: { showHeader: true, tableStyleId: tableThemeName },
              },
              back: {
                id: DeleteSheetTableMutation.id,
                params: { ...on(step.block.sheet), tableId: step.name },
              },
            },
          ];
    case "grow-table": {
      const table = tableNamed(injector, cells, step.name);
      if (!table) return fault("failed", step.name);
      const updateRange = { newRange: rangeOf(step.block) };
      return [
        { id: SetSheetTableCommand.id, params: { unitId, tableId: table.id, updateRange } },
        ...likeAbove(cells, step.block, table.range.endRow),
      ];
    }
    case "set-width": {
      const { column } = step;
      const ranges = [{ startRow: 0, endRow: 0, startColumn: column, endColumn: column }];
      const value = columnWidth(step.characters);
      return [{ id: SetColWidthCommand.id, params: { ...on(step.sheet), ranges, value } }];
    }
    case "freeze-rows": {
      const split = { startRow: step.rows, ySplit: step.rows, startColumn: -1, xSplit: 0 };
      return [{ id: SetFrozenCommand.id, params: { ...on(step.sheet), ...split } }];
    }
    case "add-note":
      return everyCell(step.block, () => ({ note: step.text, hanging: newName() }));
    case "offer-words":
      return everyCell(step.block, () => ({ words: step.words }));
    case "add-chart":
      return fault("not-offered", "charts");
    case "print-area": {
      // The page prints nothing; its first cell carries this to the file that is saved.
      const { landscape, secondPage } = step;
      const { rows, columns } = step.block;
      const first = { ...step.block, rows: 1, columns: 1 };
      return everyCell(first, () => ({ print: { rows, columns, landscape, secondPage } }));
    }
    case "select":
      return names.sheet(step.block.sheet)
        ? [
            { id: SetWorksheetActivateCommand.id, params: on(step.block.sheet) },
            {
              id: SetSelectionsOperation.id,
              params: {
                ...on(step.block.sheet),
                selections: [
                  { range: rangeOf(step.block), primary: primaryOf(step.block), style: null },
                ],
              },
            },
          ]
        : fault("failed", step.block.sheet);
  }
}

const primaryOf = ({ row, column }: Block) => ({
  actualRow: row,
  actualColumn: column,
  startRow: row,
  startColumn: column,
  endRow: row,
  endColumn: column,
  isMerged: false,
  isMergedMainCell: false,
});

/** What a cell carries beside its value, so that a note does not take the words away. */
const cellCustom = (cells: WorkbookCells, block: Block, row: number, column: number) =>
  cells.names.sheet(block.sheet)?.getCellRaw(block.row + row, block.column + column)?.custom ?? {};
