/** The same cells and formulas, worked out by the page's engine and by LibreOffice. */
import type { HeadlessWorkbook } from "../../../src/workbench/engine/headless";
import { openHeadless } from "../../../src/workbench/engine/node";
import type { Book, BookCell, BookSheet } from "../../../src/sheet/book";
import { formulaToFile } from "../../../src/xlsx/formulas/to-file";
import { rawBook, type RawCell } from "../twins/raw-book";
import { shownBy } from "../xlsx/libreoffice";
import { rowsIn } from "./inputs";

export interface Both {
  readonly formula: string;
  readonly page: unknown;
  /** The page knows that it may be otherwise elsewhere. */
  readonly isDoubtful: boolean;
  readonly program: string;
  /** 1 a number, 2 text, 4 a boolean, 16 an error. */
  readonly type: string;
}

const cell = (raw: RawCell): BookCell | null => {
  if (raw === null) return null;
  return typeof raw === "object" ? { formula: `=${raw.formula}` } : { value: raw };
};

const sheet = (name: string, rows: readonly (readonly RawCell[])[]): BookSheet => ({
  name,
  rows: rows.map((row) => row.map(cell)),
  columnWidths: [],
  tables: [],
  frozenRows: 0,
});

const plain = (workbook: HeadlessWorkbook, row: number): unknown => {
  const value = workbook.value({ sheet: "F", row, column: 0 });
  return value !== null && typeof value === "object" ? value.basicValue : value;
};

const idsOf = ({ cells: { names } }: HeadlessWorkbook) => ({
  unit: names.unit,
  sheetId: names.sheetId("F"),
});

async function byPage(formulas: readonly string[]): Promise<Pick<Both, "page" | "isDoubtful">[]> {
  const rows = formulas.map((formula) => [{ formula }]);
  const book: Book = { name: "proven", sheets: [sheet("In", rowsIn), sheet("F", rows)] };
  const workbook = await openHeadless(book);
  try {
    const { unit, sheetId } = idsOf(workbook);
    return formulas.map((_, row) => ({
      page: plain(workbook, row),
      isDoubtful: workbook.working.doubts.isDoubtful({ unit, sheet: sheetId, row, column: 0 }),
    }));
  } finally {
    workbook.close();
  }
}

const typeOf = (cell: string): string =>
  `IF(ISERROR(${cell}),16,IF(ISTEXT(${cell}),2,IF(ISLOGICAL(${cell}),4,1)))`;

function byProgram(formulas: readonly string[]): readonly (readonly string[])[] {
  const rows = formulas.map((formula, row) => [
    { formula: formulaToFile(`=${formula}`, "A1") },
    { formula: typeOf(`A${row + 1}`) },
  ]);
  const shown = shownBy(new Map([["proven", rawBook({ In: rowsIn, F: rows })]]), 0);
  return shown.get("proven")?.get("F") ?? [];
}

/** @param formulas without their equals signs; what they refer to stands in inputs.ts */
export async function byBoth(formulas: readonly string[]): Promise<Both[]> {
  const page = await byPage(formulas);
  const program = byProgram(formulas);
  return formulas.map((formula, row) => ({
    formula,
    page: page[row]?.page,
    isDoubtful: Boolean(page[row]?.isDoubtful),
    program: program[row]?.[0] ?? "",
    type: program[row]?.[1] ?? "",
  }));
}

/** The program's own codes for what it has no sign for in files: a wrong argument, mostly. */
const isOwnCode = (shown: string): boolean => /^Err:/.test(shown);

const nearness = 1e-12;
/** The program shows so many decimals. */
const lastDecimal = 5e-21;

export function isSame({ page, program, type }: Both): boolean {
  if (type === "16" || isOwnCode(program)) {
    return isOwnCode(program) ? page === "#VALUE!" || page === "#NUM!" : page === program;
  }
  if (typeof page === "number") {
    const figure = program.endsWith("%") ? Number(program.slice(0, -1)) / 100 : Number(program);
    // an empty cell that is shown as nothing is no 0
    return (
      type === "1" &&
      program !== "" &&
      Math.abs(page - figure) <= nearness * Math.abs(page) + lastDecimal
    );
  }
  if (typeof page === "boolean") return type === "4" && program === String(page).toUpperCase();
  return type === "2" && program === (page ?? "");
}
