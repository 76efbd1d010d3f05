/** A column of a logbook table: what stands in it, and for a calculated column its one formula. */
export interface Column {
  /** The heading carries the unit. */
  readonly heading: string;
  /** Typed by a person, or calculated by the column's one formula. */
  readonly kind: "input" | "calculated";
  /** What to type, or what the figure is. */
  readonly note: string;
  /** A number format as the spreadsheet writes it; text columns have none. */
  readonly format?: string;
  /** Width in characters. */
  readonly width: number;
  /** With its equals sign; the same for every row, by structured references. */
  readonly formula?: string;
  /** What may be chosen, where the choice is a list of words. */
  readonly choices?: readonly string[];
}

export interface TableShape {
  readonly name: string;
  readonly columns: readonly Column[];
}

/** This row's cell in a column, in the long form that files store. */
export const cellOf = (table: string, heading: string): string =>
  `${table}[[#This Row],[${heading}]]`;

/** This row's cells from one column to another. */
export const cellsOf = (table: string, from: string, to: string): string =>
  `${table}[[#This Row],[${from}]:[${to}]]`;
