import type { Block } from "../../sheet/port";
import type { Refusal } from "../../sheet/refusal";

/** What the open file says about itself that the embedded spreadsheet has no place for. */
export interface FileFacts {
  /** No sheet can be added. */
  readonly isLocked: boolean;
  /** Sheets that take no changes but in the cells left open. */
  readonly protectedSheets: ReadonlySet<string>;
  /** Tables with a row of totals below. */
  readonly withTotals: ReadonlySet<string>;
}

/** Of a workbook of our own. */
export const noFacts: FileFacts = {
  isLocked: false,
  protectedSheets: new Set(),
  withTotals: new Set(),
};

/** The open file and its page, as the host reaches them. */
export interface HostFile {
  facts(): FileFacts;
  /** As it would be saved now. */
  bytes(): Promise<Uint8Array | Refusal>;
  /** Scrolls to a block that was selected, no further than it takes to see it. */
  reveal?(block: Block): void;
  /** Somebody asked to be taken to a cell, and nothing was written. */
  goneTo?(): void;
}
