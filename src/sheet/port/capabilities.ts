/** What a host can do here and now, so that nothing is offered that it cannot. */
export interface Capabilities {
  readonly kind: "capabilities";
  /** What the program is called in a sentence: "the workbench". */
  readonly program: string;
  readonly canWrite: boolean;
  readonly hasFileBytes: boolean;
  /** A file can be opened beside this workbook, as a new one. */
  readonly opensFiles: boolean;
  /** A link can save a file: not so where the page stands in a program that does not listen to it. */
  readonly savesFiles: boolean;
  readonly hasCharts: boolean;
}
