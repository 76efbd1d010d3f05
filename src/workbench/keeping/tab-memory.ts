/**
 * Which workbook this tab has open, and where in it one is: of the tab alone, and there again when it is
 * loaded again. Written there and then, since a page that is left waits for nothing.
 */
import type { CellPlace } from "../../sheet/area";
import { isObject } from "../../taskpane/drafts/believed";
import { placeFrom } from "./entry";

export interface Remembered {
  /** "" when the example is to be shown. */
  readonly id: string;
  readonly place?: CellPlace | undefined;
  /** It was being opened, and the tab stopped before it was: it may do so again. */
  readonly isOpening: boolean;
}

const key = "titrebook-workbook";

function storage(): Storage | undefined {
  try {
    return globalThis.sessionStorage;
  } catch {
    return undefined;
  }
}

export function remembered(text: string | null | undefined): Remembered | undefined {
  try {
    const value: unknown = JSON.parse(text ?? "null");
    if (!isObject(value) || typeof value.id !== "string") return undefined;
    return { id: value.id, place: placeFrom(value.place), isOpening: value.isOpening === true };
  } catch {
    return undefined;
  }
}

export const tabMemory = {
  read: (): Remembered | undefined => remembered(storage()?.getItem(key)),
  note(what: Remembered): void {
    try {
      storage()?.setItem(key, JSON.stringify(what));
    } catch {
      // the browser's own list of what was open last must do
    }
  },
};

export type TabMemory = typeof tabMemory;
