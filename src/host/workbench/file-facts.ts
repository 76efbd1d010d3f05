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

/** The open file, as the host reaches it. */
export interface HostFile {
  facts(): FileFacts;
  /** As it would be saved now; a sentence when it cannot be. */
  bytes(): Promise<Uint8Array | string>;
}
