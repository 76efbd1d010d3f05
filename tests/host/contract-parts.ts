/** What the tests of the contract are written with: small books, questions, steps. */
import { expect } from "vitest";
import {
  type Block,
  type CellContent,
  type Cells,
  type Content,
  type Found,
  type Host,
  isFault,
  type Question,
  type Step,
} from "../../src/sheet/port";
import type { Book, BookCell, BookTable } from "../../src/sheet/book";

/** A host in a test, with what a person at the keyboard could do. */
export interface OpenHost {
  readonly host: Host;
  undo(): Promise<void>;
  redo(): Promise<void>;
  select(block: Block): Promise<void>;
  /** For hosts that have protected sheets and filtered tables. */
  protect(sheet: string): Promise<void>;
  filter(table: string): Promise<void>;
  close(): void;
}

/** What the program has, beyond what all of them have. */
export interface Offers {
  readonly protection: boolean;
  readonly filters: boolean;
  readonly charts: boolean;
  /** A write that failed leaves nothing behind that could be undone. */
  readonly cleanFailures: boolean;
}

/** Opens a book, and closes it after the test. */
export type Opening = (book: Book) => Promise<OpenHost>;

export type OpenBook = (book: Book) => Promise<OpenHost>;

export const block = (
  row: number,
  column: number,
  rows = 1,
  columns = 1,
  sheet = "Log",
): Block => ({
  sheet,
  row,
  column,
  rows,
  columns,
});

export const value = (given: string | number | boolean): Content => ({
  kind: "value",
  value: given,
});
export const formula = (given: string): Content => ({ kind: "formula", formula: given });
export const set = (at: Block, contents: Content[][]): Step => ({
  do: "set-cells",
  block: at,
  contents,
});

const typed = (given: string | number | boolean | null): BookCell | null => {
  if (given === null) return null;
  return typeof given === "string" && given.startsWith("=") ? { formula: given } : { value: given };
};

export const bookOf = (
  rows: readonly (readonly (string | number | boolean | null)[])[],
  tables: readonly BookTable[] = [],
): Book => ({
  name: "test",
  sheets: [
    {
      name: "Log",
      rows: rows.map((row) => row.map(typed)),
      columnWidths: [],
      tables,
      frozenRows: 0,
    },
    { name: "Other sheet", rows: [[{ value: 7 }]], columnWidths: [], tables: [], frozenRows: 0 },
  ],
});

/** A title, then a table of two rows with a calculated column. */
export const logbook = bookOf(
  [
    ["Titrations of the jetty"],
    ["Lot", "Titre 1 mL", "Blank 1 mL", "Corrected"],
    [
      "A",
      2.4,
      0.1,
      "=TITRE.CORRECTED(Jetty[[#This Row],[Titre 1 mL]],Jetty[[#This Row],[Blank 1 mL]])",
    ],
    [
      "B",
      3.1,
      0.1,
      "=TITRE.CORRECTED(Jetty[[#This Row],[Titre 1 mL]],Jetty[[#This Row],[Blank 1 mL]])",
    ],
  ],
  [{ name: "Jetty", row: 1, column: 0, rows: 3, columns: 4 }],
);

export const read = async (host: Host, ...questions: Question[]): Promise<readonly Found[]> => {
  const found = await host.read(questions);
  if (isFault(found)) throw new Error(`fault ${found.code} ${found.about}`);
  return found;
};
const isBusy = (content: CellContent): boolean =>
  typeof content === "object" && content.error === "#BUSY!";

/** Functions may answer late: whoever reads looks again, a few times. */
export const cells = async (host: Host, at: Block, tries = 3): Promise<Cells> => {
  const [found] = await read(host, { ask: "cells", block: at });
  if (found?.kind !== "cells") throw new Error("no cells");
  return tries > 0 && found.values.flat().some(isBusy) ? cells(host, at, tries - 1) : found;
};
export const done = async (host: Host, ...steps: Step[]): Promise<void> => {
  expect(await host.write("Test", steps)).toBeUndefined();
};
