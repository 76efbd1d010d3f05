/** Keeps the selection store in step with the grid: another cell, another sheet, another result. */
import { ICommandService, type IDisposable, type Injector } from "@univerjs/core";
import { SetRangeValuesMutation, SheetsSelectionsService } from "@univerjs/sheets";
import { FormulaCalculationSessionService } from "@univerjs/sheets-formula";
import { cellName } from "../../sheet/cell-name";
import type { CellPlace } from "../../sheet/area";
import { shownValue } from "../engine/formatted";
import type { WorkbookCells } from "../engine/workbook-cells";
import type { Holding } from "../holding/holding";
import { sayDoubt, sayReason } from "../holding/reasons";
import type { SelectedCell, Selection } from "../selection";

/** The cell's own note, or that of the heading above it. */
function noteAt(cells: WorkbookCells, place: CellPlace): string {
  const table = cells.names
    .tables(place.sheet)
    .find(
      ({ top, left, bottom, right }) =>
        top <= place.row && place.row <= bottom && left <= place.column && place.column <= right,
    );
  return cells.note(place) || (table ? cells.note({ ...place, row: table.top }) : "");
}

/** The pane asks for the same values again whenever it is drawn. */
function remembered<T>(find: (written: string) => T): (written: string) => T {
  const known = new Map<string, T>();
  return (written) => {
    const value = known.has(written) ? (known.get(written) as T) : find(written);
    known.set(written, value);
    return value;
  };
}

function selectedCell(cells: WorkbookCells, place: CellPlace, holding: Holding): SelectedCell {
  const value = cells.value(place);
  const formula = cells.formula(place);
  const anchor = formula === "" ? cells.spilledFrom(place) : undefined;
  const key = cells.names.sheetId(place.sheet);
  const reason = holding.reasonAt(key, place.row, place.column);
  const doubt = holding.doubtAt(key, place.row, place.column);
  const nameOf = (sheet: string) =>
    cells.names.workbook.getSheetBySheetId(sheet)?.getName() ?? sheet;
  return {
    sheet: place.sheet,
    address: cellName(place.row, place.column),
    formula,
    value,
    ...(typeof value === "object" && value !== null ? { error: value.basicValue } : {}),
    ...(formula === "" && typeof value === "string" ? { text: value } : {}),
    shown: shownValue(value, cells.format(place)),
    note: noteAt(cells, place),
    ...(reason ? { held: sayReason(reason, place.sheet, nameOf) } : {}),
    ...(doubt ? { doubt: sayDoubt(doubt, place.sheet, nameOf) } : {}),
    ...(anchor
      ? {
          spilledFrom: {
            address: cellName(anchor.row, anchor.column),
            formula: cells.formula(anchor),
          },
        }
      : {}),
    lookup: remembered((written) => cells.lookup(written, anchor ?? place)),
  };
}

/** Until what it returns is disposed of: when another workbook is shown. */
export function watchSelection(
  injector: Injector,
  cells: WorkbookCells,
  selection: Selection,
  holding: Holding,
): IDisposable {
  const selections = injector.get(SheetsSelectionsService);
  let isDue = false;
  let due: ReturnType<typeof setTimeout> | undefined;

  const update = (): void => {
    isDue = false;
    const cell = selections.getCurrentLastSelection()?.primary;
    if (!cell) return;
    const sheet = cells.names.workbook.getActiveSheet().getName();
    const place = { sheet, row: cell.actualRow, column: cell.actualColumn };
    selection.set(selectedCell(cells, place, holding));
  };
  /** Several changes come in one go: look once, when they are through. */
  const soon = (): void => {
    if (isDue) return;
    isDue = true;
    due = setTimeout(update);
  };

  const heard = [
    selections.selectionChanged$.subscribe(soon),
    cells.names.workbook.activeSheet$.subscribe(soon),
    injector.get(FormulaCalculationSessionService).resultApplied$.subscribe(soon),
  ];
  const commands = injector.get(ICommandService).onCommandExecuted(({ id }) => {
    if (id === SetRangeValuesMutation.id) soon();
  });
  soon();
  return {
    dispose: () => {
      isDue = true;
      clearTimeout(due);
      for (const each of heard) each.unsubscribe();
      commands.dispose();
    },
  };
}
