import { workbookAt } from "./workbook-at";

/** What the spreadsheet program says about where the pane runs. */
export interface Surroundings {
  /** Keeps what this site stores apart from what it stores inside another site. */
  readonly partition: string;
  /** Which workbook drafts belong to: one name a file; "" while it is in none. */
  readonly workbook: string;
  /** "en-GB", "de-DE": how its user writes numbers. */
  readonly locale: string;
}

/** A requirement set of the program's: what it does not name, it must not be asked for. */
export const isOffered = (set: string, version = "1.1"): boolean =>
  Office.context.requirements.isSetSupported(set, version);

export const surroundings = (): Surroundings => ({
  partition: Office.context.partitionKey ?? "",
  // untested in Excel: its types promise a text, and what is in no file may have none
  workbook: workbookAt((Office.context.document?.url as string | undefined) ?? ""),
  locale: Office.context.contentLanguage,
});
