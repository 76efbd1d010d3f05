/**
 * Home and End in the sheet, which the embedded spreadsheet does not know: to the first cell of the row and
 * to the last column that is used; with Ctrl to the first cell that is not frozen and to the last used one.
 * With Shift the selection grows that far.
 */
import { CommandType, ICommandService, type Injector, RANGE_TYPE } from "@univerjs/core";
import { whenSheetEditorFocused } from "@univerjs/preset-sheets-core";
import {
  getPrimaryForRange,
  SelectionMoveType,
  SetSelectionsOperation,
  SheetsSelectionsService,
} from "@univerjs/sheets";
import { IShortcutService, MetaKeys } from "@univerjs/ui";
import type { Place } from "../sheet/area";
import type { WorkbookCells } from "./engine/workbook-cells";

type End = "home" | "end" | "first" | "last";

/** The keys as events number them. */
const keys = { home: 36, end: 35 } as const;

const bindings: readonly (readonly [number, End])[] = [
  [keys.home, "home"],
  [keys.end, "end"],
  [keys.home | MetaKeys.CTRL_COMMAND, "first"],
  [keys.end | MetaKeys.CTRL_COMMAND, "last"],
];

interface SheetEnds {
  readonly frozenRows: number;
  readonly frozenColumns: number;
  /** Of the last used cell; undefined on an empty sheet. */
  readonly last: Place | undefined;
}

/** Where a key leads from a row. */
function endOf(end: End, row: number, ends: SheetEnds): Place {
  const { frozenRows, frozenColumns, last = { row: 0, column: 0 } } = ends;
  switch (end) {
    case "home":
      return { row, column: 0 };
    case "end":
      return { row, column: last.column };
    case "first":
      return { row: frozenRows, column: frozenColumns };
    case "last":
      return last;
  }
}

export function goToTheEnds(injector: Injector, cells: WorkbookCells): void {
  const selections = injector.get(SheetsSelectionsService);
  const commands = injector.get(ICommandService);
  const go = (end: End, grows: boolean): boolean => {
    const sheet = cells.names.workbook.getActiveSheet();
    const now = selections.getCurrentLastSelection();
    if (!now) return false;
    const { ySplit, xSplit } = sheet.getFreeze();
    const extent = cells.names.extent(sheet.getName());
    const from = { row: now.primary?.actualRow ?? now.range.startRow };
    // what grows is the far side from the cell one is in
    const far = now.range.startRow < from.row ? now.range.startRow : now.range.endRow;
    const to = endOf(end, grows ? far : from.row, {
      frozenRows: Math.max(0, ySplit),
      frozenColumns: Math.max(0, xSplit),
      last: extent && extent.bottom >= 0 ? { row: extent.bottom, column: extent.right } : undefined,
    });
    const start = grows ? (now.primary ?? now.range) : undefined;
    const range = {
      startRow: Math.min(to.row, start?.startRow ?? to.row),
      startColumn: Math.min(to.column, start?.startColumn ?? to.column),
      endRow: Math.max(to.row, start?.endRow ?? to.row),
      endColumn: Math.max(to.column, start?.endColumn ?? to.column),
      rangeType: RANGE_TYPE.NORMAL,
    };
    const cell = grows ? undefined : (sheet.getMergedCell(to.row, to.column) ?? undefined);
    return commands.syncExecuteCommand(SetSelectionsOperation.id, {
      unitId: cells.names.unit,
      subUnitId: sheet.getSheetId(),
      type: SelectionMoveType.MOVE_END,
      selections: [
        {
          range: cell ? { ...range, ...cell } : range,
          primary: grows ? now.primary : getPrimaryForRange(cell ?? range, sheet),
        },
      ],
      reveal: true,
    });
  };
  const shortcuts = injector.get(IShortcutService);
  for (const [key, end] of bindings) {
    for (const grows of [false, true]) {
      const id = `titrebook.operation.${grows ? "grow-to" : "go-to"}-${end}`;
      commands.registerCommand({ id, type: CommandType.OPERATION, handler: () => go(end, grows) });
      shortcuts.registerShortcut({
        id,
        binding: grows ? key | MetaKeys.SHIFT : key,
        preconditions: whenSheetEditorFocused,
      });
    }
  }
}
