/** A sheet's tab keeps what was typed into it even when the sheet was not given that name. */
import type { WorkbookCells } from "../engine/workbook-cells";

/** Shows on every tab the name its sheet has. */
function showTabNames(container: HTMLElement, { names }: WorkbookCells): void {
  for (const tab of container.querySelectorAll<HTMLElement>("[data-u-comp=slide-tab-item]")) {
    const name = names.workbook.getSheetBySheetId(tab.dataset.id ?? "")?.getName();
    const words = tab.querySelector("span");
    if (name === undefined || !words || words.isContentEditable) continue;
    if (words.textContent !== name) words.textContent = name;
  }
}

/** Says what was refused, and puts the tabs right once the grid is through with it. */
export const tabsShownAfter =
  (refused: (sentence: string) => void, container: HTMLElement, cells: WorkbookCells) =>
  (sentence: string): void => {
    refused(sentence);
    setTimeout(() => {
      showTabNames(container, cells);
    });
  };
