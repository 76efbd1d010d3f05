/**
 * What is typed is seen. The embedded spreadsheet stops short of a far column that was gone to by its address
 * or by Tab, and an editor that opens beside the screen keeps the first character alone.
 */
import { ICommandService, type Injector } from "@univerjs/core";
import { SetSelectionsOperation, SheetsSelectionsService } from "@univerjs/sheets";
import { ILayoutService } from "@univerjs/ui";
import type { CellPlace } from "../sheet/area";
import type { WorkbookNames } from "./engine/workbook-names";

/** @param reveal scrolls where a cell is not wholly in view */
export function seeBeforeTyping(
  injector: Injector,
  names: WorkbookNames,
  reveal: (place: CellPlace) => void,
  isTyping: () => boolean,
): void {
  const selections = injector.get(SheetsSelectionsService);
  // what is pointed at is in view, and stays under the pointer
  let isByKeys = false;
  let last = "";
  const show = (): void => {
    const cell = selections.getCurrentLastSelection()?.primary;
    if (!cell) return;
    const sheet = names.workbook.getActiveSheet().getName();
    reveal({ sheet, row: cell.actualRow, column: cell.actualColumn });
  };
  window.addEventListener(
    "keydown",
    () => {
      isByKeys = true;
      if (injector.get(ILayoutService).isFocused && !isTyping()) show();
    },
    { capture: true },
  );
  window.addEventListener("pointerdown", () => (isByKeys = false), { capture: true });
  injector.get(ICommandService).onCommandExecuted(({ id }) => {
    if (id !== SetSelectionsOperation.id || !isByKeys) return;
    const cell = selections.getCurrentLastSelection()?.primary;
    const now = cell ? `${String(cell.actualRow)},${String(cell.actualColumn)}` : "";
    if (now === last) return;
    last = now;
    // after what the grid itself scrolls for it
    queueMicrotask(show);
  });
}
