/**
 * What is typed is what is in the cell. While a formula is typed, the embedded spreadsheet lists functions,
 * and takes Enter and Tab for a choice from the list, though nobody chose, and though the list may be
 * that of some letters ago: OFFSET, typed quickly, became ODDFPRICE. Here Enter takes from the list only
 * what was gone to with the arrow keys; Tab also completes what the list goes by at that moment.
 */
import {
  CommandType,
  type DocumentDataModel,
  DOCS_NORMAL_EDITOR_UNIT_ID_KEY,
  EDITOR_ACTIVATED,
  type IAccessor,
  ICommandService,
  type IContextService,
  type Injector,
  IUniverInstanceService,
} from "@univerjs/core";
import {
  DeviceInputEventType,
  IEditorBridgeService,
  SetCellEditVisibleOperation,
} from "@univerjs/preset-sheets-core";
import { IShortcutService, KeyCode } from "@univerjs/ui";

const listCommand = "sheet.formula-embedding-editor.search_function";
const typing = "doc.mutation.rich-text-editing";
const operation = "titrebook.operation.end-as-typed";

/** The letters the list goes by; undefined where there is none. */
function letters(): string | undefined {
  const list = document.querySelector('ul[data-u-comp="sheets-formula-editor"]');
  return list?.querySelector("li span span")?.textContent ?? undefined;
}

const isInStep = (typed: string, letters: string): boolean =>
  letters !== "" &&
  /[\p{L}_][\p{L}\d_.]*$/u.exec(typed)?.[0].toUpperCase() === letters.toUpperCase();

export function takeAsTyped(injector: Injector, unit: () => string): void {
  const typedNow = (): string =>
    injector
      .get(IUniverInstanceService)
      .getUnit<DocumentDataModel>(DOCS_NORMAL_EDITOR_UNIT_ID_KEY)
      ?.getBody()
      ?.dataStream.trimEnd() ?? "";
  const commands = injector.get(ICommandService);
  let hasChosen = false;
  commands.onCommandExecuted(({ id, params }) => {
    if (id === typing) hasChosen = false;
    if (!id.startsWith(listCommand)) return;
    const { keyCode } = params as { keyCode: KeyCode };
    hasChosen = keyCode === KeyCode.ARROW_UP || keyCode === KeyCode.ARROW_DOWN;
  });
  commands.registerCommand({
    id: operation,
    type: CommandType.OPERATION,
    handler: (_: IAccessor, params?: { keycode: KeyCode }) => {
      injector.get(IEditorBridgeService).disableForceKeepVisible();
      return commands.syncExecuteCommand(SetCellEditVisibleOperation.id, {
        visible: false,
        eventType: DeviceInputEventType.Keyboard,
        keycode: params?.keycode,
        unitId: unit(),
      });
    },
  });
  const shortcuts = injector.get(IShortcutService);
  for (const keycode of [KeyCode.ENTER, KeyCode.TAB]) {
    const isMeant = (context: IContextService): boolean => {
      const listed = letters();
      if (listed === undefined || hasChosen || !context.getContextValue(EDITOR_ACTIVATED))
        return false;
      return keycode === KeyCode.ENTER || !isInStep(typedNow(), listed);
    };
    shortcuts.registerShortcut({
      id: operation,
      binding: keycode,
      // the list's own has a thousand
      priority: 2000,
      preconditions: isMeant,
      staticParameters: { keycode },
    });
  }
}
