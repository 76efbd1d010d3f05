/** What the pane asks to be printed, kept in the first of the cells until the file is saved. */
export interface PrintState {
  readonly rows: number;
  readonly columns: number;
  readonly landscape: boolean;
  /** The row of the sheet that begins the second page. */
  readonly secondPage?: number | undefined;
}
