/**
 * Shift with Tab, or with Enter, goes back a cell, as Tab and Enter go on. The embedded spreadsheet looks
 * for a selection before the first one, finds none, and stays where it is; while a cell is typed into it
 * does not know these keys at all.
 */
import {
  Direction,
  EDITOR_ACTIVATED,
  FOCUSING_SHEET,
  type IContextService,
  type Injector,
} from "@univerjs/core";
import {
  DeviceInputEventType,
  MoveSelectionCommand,
  SetCellEditVisibleOperation,
  whenSheetEditorFocused,
} from "@univerjs/preset-sheets-core";
import { SheetsSelectionsService } from "@univerjs/sheets";
import { IShortcutService, KeyCode, MetaKeys } from "@univerjs/ui";

const ways = [
  { key: KeyCode.TAB, direction: Direction.LEFT, arrow: KeyCode.ARROW_LEFT, side: "startColumn" },
  { key: KeyCode.ENTER, direction: Direction.UP, arrow: KeyCode.ARROW_UP, side: "startRow" },
] as const;

export function goBackACell(injector: Injector, unit: () => string): void {
  const shortcuts = injector.get(IShortcutService);
  /**
   * Further on in a range its cells are gone through backwards, which the spreadsheet knows. At the edge of
   * the sheet there is no cell before, and the next one typed into would stand at its far end.
   */
  const isAtStart = (side: (typeof ways)[number]["side"]): boolean => {
    const [first] = injector.get(SheetsSelectionsService).getCurrentSelections();
    const { range, primary } = first ?? {};
    return (
      primary?.startRow === range?.startRow &&
      primary?.startColumn === range?.startColumn &&
      (primary?.[side] ?? 0) > 0
    );
  };
  for (const { key, direction, arrow, side } of ways) {
    const binding = key | MetaKeys.SHIFT;
    shortcuts.registerShortcut({
      id: MoveSelectionCommand.id,
      binding,
      // the spreadsheet's own has a hundred
      priority: 200,
      preconditions: (context) => whenSheetEditorFocused(context) && isAtStart(side),
      staticParameters: { direction },
    });
    shortcuts.registerShortcut({
      id: SetCellEditVisibleOperation.id,
      binding,
      priority: 200,
      preconditions: (context: IContextService) =>
        context.getContextValue(FOCUSING_SHEET) && context.getContextValue(EDITOR_ACTIVATED),
      // by the arrow's key it knows where to go from there
      get staticParameters() {
        return {
          visible: false,
          eventType: DeviceInputEventType.Keyboard,
          keycode: arrow,
          unitId: unit(),
        };
      },
    });
  }
}
