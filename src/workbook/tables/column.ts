/**
 * A column of a logbook table, said once: what stands in it, what it is of a record, and for a
 * calculated column its one formula. Rows, plans and lists of headings follow from that.
 */
import type { Exact } from "../../core/exact/exact";
import { baseNames } from "../../core/reference/bases";
import { oils } from "../../core/reference/oils";
import type { BookValue } from "../../sheet/book";

/** @typeParam Of the record its rows are made of; `never` where nobody asks */
export interface Column<Of = never> {
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
  /** What stands there of a record; left out where a person fills it in later. */
  readonly of?: (record: Of) => BookValue | Exact | null | undefined;
  /** With the others like it, it tells one record from another. */
  readonly tells?: boolean;
  /** A table of this name without it is something else. */
  readonly isEssential?: boolean;
  /** It needs a figure nobody has to give: without it it shows #N/A, and the record is whole. */
  readonly mayLack?: boolean;
}

export interface TableShape<Of = never> {
  readonly name: string;
  /** What stands in the two rows above the headings. */
  readonly title: string;
  readonly guidance: string;
  readonly columns: readonly Column<Of>[];
}

/** A table of ours that records go into, and the words a plan uses about one of its rows. */
export interface RecordTable<Of = never> extends TableShape<Of> {
  /** One record, in words: "titration". */
  readonly what: string;
  /** What tells one from another, in words: "same date, same lot, same readings". */
  readonly tellingWords: string;
}

/** A column that a person types into. */
export const typed = <Of>(
  heading: string,
  width: number,
  note: string,
  more: Omit<Column<Of>, "heading" | "kind" | "note" | "width" | "formula" | "mayLack"> = {},
): Column<Of> => ({ heading, kind: "input", width, note, ...more });

/** A column with one formula, given without its equals sign. */
export const calculated = (
  heading: string,
  format: string,
  note: string,
  formula: string,
  width = 12,
): Column<unknown> => ({
  heading,
  kind: "calculated",
  format,
  width,
  note,
  formula: `=${formula}`,
});

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

/** A row that is not begun shows nothing: what is wanted is said of rows with an essential cell filled in. */
export function emptyUntilBegun<Of>(table: string, columns: readonly Column<Of>[]): Column<Of>[] {
  const essential = columns.filter(({ isEssential }) => isEssential);
  const begun = essential.map(({ heading }) => cellOf(table, heading)).join(",");
  return columns.map((column) =>
    column.formula === undefined
      ? column
      : { ...column, formula: `=IF(COUNTA(${begun})=0,"",${column.formula.slice(1)})` },
  );
}

/** The headings of its columns that are so, in their order. */
export const headingsOf = (
  { columns }: TableShape,
  how: "tells" | "isEssential" | "mayLack",
): string[] => columns.filter((column) => column[how] === true).map(({ heading }) => heading);
