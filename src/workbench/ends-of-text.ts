/**
 * Home and End while a cell is typed into, which the embedded spreadsheet does not know: to the ends of the
 * line, with Ctrl to those of all the text. With Shift what lies between is selected.
 */
import {
  CommandType,
  type DocumentDataModel,
  EDITOR_ACTIVATED,
  ICommandService,
  type Injector,
  IUniverInstanceService,
  RANGE_DIRECTION,
  UniverInstanceType,
} from "@univerjs/core";
import { DocSelectionManagerService } from "@univerjs/preset-sheets-core";
import { IShortcutService, MetaKeys } from "@univerjs/ui";

/** The keys as events number them. */
const keys = { home: 36, end: 35 } as const;
type Key = keyof typeof keys;

/** What ends a line in the editor's text, and what ends all of it. */
const lineEnd = "\r";
const textEnd = /\r\n$/;

/** Where a key leads from a place in a text. */
function endOf(key: Key, text: string, from: number, isOfAll: boolean): number {
  if (key === "home") return isOfAll || from === 0 ? 0 : text.lastIndexOf(lineEnd, from - 1) + 1;
  const next = isOfAll ? -1 : text.indexOf(lineEnd, from);
  return next < 0 ? text.length : next;
}

export function goToEndsOfText(injector: Injector): void {
  const selections = injector.get(DocSelectionManagerService);
  const commands = injector.get(ICommandService);
  const units = injector.get(IUniverInstanceService);
  const go = (key: Key, isOfAll: boolean, grows: boolean): boolean => {
    const typed = units.getCurrentUnitOfType<DocumentDataModel>(UniverInstanceType.UNIVER_DOC);
    const now = selections.getActiveTextRange();
    if (!typed || !now) return false;
    const text = (typed.getBody()?.dataStream ?? "").replace(textEnd, "");
    const isBackward = now.direction === RANGE_DIRECTION.BACKWARD;
    const from = isBackward ? now.startOffset : now.endOffset;
    const other = isBackward ? now.endOffset : now.startOffset;
    const to = endOf(key, text, from, isOfAll);
    selections.replaceDocRanges([{ startOffset: grows ? other : to, endOffset: to }]);
    return true;
  };
  const shortcuts = injector.get(IShortcutService);
  for (const key of ["home", "end"] as const)
    for (const isOfAll of [false, true])
      for (const grows of [false, true]) {
        const how = `${grows ? "grow-" : ""}${isOfAll ? "all-" : ""}${key}`;
        const id = `titrebook.operation.text-${how}`;
        const handler = () => go(key, isOfAll, grows);
        commands.registerCommand({ id, type: CommandType.OPERATION, handler });
        shortcuts.registerShortcut({
          id,
          binding: keys[key] | (isOfAll ? MetaKeys.CTRL_COMMAND : 0) | (grows ? MetaKeys.SHIFT : 0),
          // before all that the spreadsheet knows
          priority: 2000,
          preconditions: (context) => context.getContextValue(EDITOR_ACTIVATED),
        });
      }
}
