/** What is being typed in a cell, and is in no cell yet. */
import { ICommandService, type Injector } from "@univerjs/core";
import {
  DeviceInputEventType,
  IEditorBridgeService,
  SetCellEditVisibleOperation,
} from "@univerjs/preset-sheets-core";

export const isTyping = (injector: Injector): boolean =>
  injector.get(IEditorBridgeService).isVisible().visible;

/** Takes it as typed. */
export async function finishTyping(injector: Injector, unit: string): Promise<void> {
  await injector.get(ICommandService).executeCommand(SetCellEditVisibleOperation.id, {
    visible: false,
    eventType: DeviceInputEventType.PointerDown,
    unitId: unit,
  });
}
