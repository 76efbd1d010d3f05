/**
 * Who goes into the name box ends what was being typed: it stays in its cell. The embedded spreadsheet leaves
 * the editor open behind it, so that Enter would go to the row below and not to the address. A press marks
 * the address that stands there, to be typed over: typed behind it, it would be no address.
 */
import { ICommandService, type Injector } from "@univerjs/core";
import { IDefinedNamesService } from "@univerjs/engine-formula";
import { SetWorksheetColumnCountMutation, SetWorksheetRowCountMutation } from "@univerjs/sheets";
import { cellName } from "../sheet/cell-name";
import { addressTyped, type Extent } from "./address-typed";
import type { WorkbookNames } from "./engine/workbook-names";

const box = '[data-u-comp="defined-name"]';

export function endTypingAtNameBox(
  container: HTMLElement,
  isTyping: () => boolean,
  finish: () => Promise<void>,
  wrongWith: (typed: string) => string | undefined,
  refused: (sentence: string) => void,
): void {
  container.addEventListener(
    "focusin",
    ({ target }) => {
      if (!(target instanceof HTMLInputElement) || !target.closest(box) || !isTyping()) return;
      // the editor gives the keyboard to the cells as it closes
      void finish().then(() => {
        target.focus();
        target.select();
      });
    },
    { capture: true },
  );
  let isEntered = false;
  container.addEventListener(
    "pointerdown",
    ({ target }) => {
      isEntered = target instanceof HTMLInputElement && document.activeElement !== target;
    },
    { capture: true },
  );
  container.addEventListener("click", ({ target }) => {
    if (!isEntered || !(target instanceof HTMLInputElement) || !target.closest(box)) return;
    // a piece of it that was drawn over stays marked
    if (target.selectionStart === target.selectionEnd) target.select();
  });
  container.addEventListener(
    "keydown",
    (event) => {
      const { target, key } = event;
      if (key !== "Enter" || !(target instanceof HTMLInputElement) || !target.closest(box)) return;
      const sentence = wrongWith(target.value);
      if (sentence === undefined) return;
      event.stopPropagation();
      refused(sentence);
      target.select();
    },
    { capture: true },
  );
}

/** As far as an empty sheet is made larger for an address. */
const most: Extent = { rows: 20_000, columns: 702 };

/**
 * Why what is typed into the box leads nowhere; undefined where it leads to a cell, for which the sheet is
 * made large enough: beyond its end the embedded spreadsheet would go to another cell.
 */
export const whyNoAddress =
  (injector: Injector, names: WorkbookNames) =>
  (typed: string): string | undefined => {
    const text = typed.trim();
    if (injector.get(IDefinedNamesService).getValueByName(names.unit, text)) return undefined;
    const asked = addressTyped(text);
    if (asked === undefined) return undefined;
    if (asked === "none") return `“${text}” is no cell: type an address, as in B12.`;
    const sheet = names.workbook.getActiveSheet();
    const now = { rows: sheet.getRowCount(), columns: sheet.getColumnCount() };
    const rows = Math.max(now.rows, asked.rows);
    const columns = Math.max(now.columns, asked.columns);
    if (rows > Math.max(most.rows, now.rows) || columns > Math.max(most.columns, now.columns)) {
      const last = cellName(
        Math.max(most.rows, now.rows) - 1,
        Math.max(most.columns, now.columns) - 1,
      );
      return `${text} is farther than this page goes: to ${last}.`;
    }
    enlarge(injector, names, { rows, columns }, now);
    return undefined;
  };

/** No step of undo: nothing is written. */
function enlarge(injector: Injector, names: WorkbookNames, to: Extent, now: Extent): void {
  const command = injector.get(ICommandService);
  const place = {
    unitId: names.unit,
    subUnitId: names.workbook.getActiveSheet().getSheetId(),
  };
  if (to.rows > now.rows) {
    const rowCount = to.rows + spare;
    command.syncExecuteCommand(SetWorksheetRowCountMutation.id, { ...place, rowCount });
  }
  if (to.columns > now.columns) {
    const columnCount = to.columns + spare;
    command.syncExecuteCommand(SetWorksheetColumnCountMutation.id, { ...place, columnCount });
  }
}

/** Rows and columns that stand behind the one that was gone to. */
const spare = 20;
