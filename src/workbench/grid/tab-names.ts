/**
 * A sheet's tab keeps what was typed into it even when the sheet was not given that name, and no tab
 * takes a press any more until the tabs are drawn again.
 */
import type { ICommandService } from "@univerjs/core";
import { SetWorksheetActiveOperation } from "@univerjs/sheets";
import type { WorkbookCells } from "../engine/workbook-cells";

/** Shows on every tab the name its sheet has. True when one showed another. */
function showTabNames(container: HTMLElement, { names }: WorkbookCells): boolean {
  let isWrong = false;
  for (const tab of container.querySelectorAll<HTMLElement>("[data-u-comp=slide-tab-item]")) {
    const name = names.workbook.getSheetBySheetId(tab.dataset.id ?? "")?.getName();
    const words = tab.querySelector("span");
    if (name === undefined || !words || words.isContentEditable) continue;
    if (words.textContent === name) continue;
    words.textContent = name;
    isWrong = true;
  }
  return isWrong;
}

/** Says what was refused, or nothing where somebody thought better of it, and puts the tabs right once the grid is through with it. */
export const tabsShownAfter =
  (
    refused: (sentence: string) => void,
    container: HTMLElement,
    cells: WorkbookCells,
    commands: ICommandService,
  ) =>
  (sentence: string): void => {
    if (sentence !== "") refused(sentence);
    setTimeout(() => {
      if (!showTabNames(container, cells)) return;
      const { unit, workbook } = cells.names;
      const subUnitId = workbook.getActiveSheet().getSheetId();
      // showing the sheet that is shown draws the tabs anew
      void commands.executeCommand(SetWorksheetActiveOperation.id, { unitId: unit, subUnitId });
    });
  };
