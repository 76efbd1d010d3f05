/** A column of a logbook table: what stands in it, and for a calculated column its one formula. */
import { baseNames } from "../../core/reference/bases";
import { oils } from "../../core/reference/oils";

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
  /** What stands in the two rows above the headings. */
  readonly title: string;
  readonly guidance: string;
  readonly columns: readonly Column[];
}

/** A column that a person types into. */
export const typed = (
  heading: string,
  width: number,
  note: string,
  more: Pick<Column, "format" | "choices"> = {},
): Column => ({ heading, kind: "input", width, note, ...more });

/** A column with one formula, given without its equals sign. */
export const calculated = (
  heading: string,
  format: string,
  note: string,
  formula: string,
  width = 12,
): Column => ({ heading, kind: "calculated", format, width, note, formula: `=${formula}` });

/** The bases, as a list to choose from. */
export const baseChoices: readonly string[] = baseNames;

const commonest = "used cooking oil";

/** The oils, the commonest first. */
export const oilChoices: readonly string[] = [
  commonest,
  ...oils.map(({ name }) => name).filter((name) => name !== commonest),
];

/** This row's cell in a column, in the long form that files store. */
export const cellOf = (table: string, heading: string): string =>
  `${table}[[#This Row],[${heading}]]`;

/** This row's cells from one column to another. */
export const cellsOf = (table: string, from: string, to: string): string =>
  `${table}[[#This Row],[${from}]:[${to}]]`;
