/**
 * The editor in a cell opens where that cell stands. The grid takes the scroll of the area that was last
 * clicked, so that after sideways scrolling a cell reached by keyboard, or by its address, would be edited
 * beside the sheet when it lies across the line that columns are frozen at.
 */
import type { Injector } from "@univerjs/core";
import {
  getViewportByCell,
  IRenderManagerService,
  ISheetSelectionRenderService,
} from "@univerjs/preset-sheets-core";
import { SheetsSelectionsService } from "@univerjs/sheets";
import type { WorkbookNames } from "../engine/workbook-names";

export function editWhereTheCellStands(injector: Injector, names: WorkbookNames): void {
  const drawn = injector.get(IRenderManagerService).getRenderUnitById(names.unit);
  const shown = drawn?.with(ISheetSelectionRenderService);
  if (!drawn || !shown) return;
  const lastClicked = shown.getViewPort.bind(shown);
  const selections = injector.get(SheetsSelectionsService);
  shown.getViewPort = () => {
    const cell = selections.getCurrentLastSelection()?.primary;
    const sheet = names.workbook.getActiveSheet();
    const area = cell && getViewportByCell(cell.actualRow, cell.actualColumn, drawn.scene, sheet);
    return area ?? lastClicked();
  };
}
