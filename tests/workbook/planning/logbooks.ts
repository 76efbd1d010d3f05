/** Logbooks of other people: our headings in another order, some missing, some of their own. */
import type { Book, BookCell } from "../../../src/sheet/book";
import { titrations } from "../../../src/workbook/tables/titrations";

export type Typed = string | number | null;

const cell = (typed: Typed): BookCell | null => {
  if (typed === null) return null;
  return typeof typed === "string" && typed.startsWith("=") ? { formula: typed } : { value: typed };
};

export interface LogbookParts {
  readonly headings: readonly string[];
  /** Rows of the table. */
  readonly rows?: readonly (readonly Typed[])[];
  /** What stands right below the table. */
  readonly below?: readonly Typed[];
  readonly name?: string;
  readonly sheet?: string;
}

export function logbookOf(parts: LogbookParts): Book {
  const { headings, rows = [headings.map(() => null)], below = [] } = parts;
  const { name = "Titrations", sheet = "Lab log" } = parts;
  return {
    name: "a logbook",
    sheets: [
      {
        name: sheet,
        rows: [
          [{ value: "Ferry oil" }],
          headings.map((value) => ({ value })),
          ...rows.map((row) => row.map(cell)),
          below.map(cell),
        ],
        columnWidths: [],
        tables: [{ name, row: 1, column: 0, rows: rows.length + 1, columns: headings.length }],
        frozenRows: 0,
      },
    ],
  };
}

export const ourHeadings: readonly string[] = titrations.columns.map(({ heading }) => heading);

/** The formula of a column of ours. */
export const ourFormula = (heading: string): string =>
  titrations.columns.find((column) => column.heading === heading)?.formula ?? "";

/** A row under our headings, in any order, from what some of them hold. */
export const rowUnder = (
  headings: readonly string[],
  values: Readonly<Record<string, Typed>>,
): Typed[] => headings.map((heading) => values[heading] ?? null);
