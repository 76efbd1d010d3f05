/** Logbooks of makers with habits of their own, with columns added and put right, as sheets of workbooks. */
import { type Offer, offers, type Spelling } from "../../src/adopt/added-columns/columns-to-add";
import type { Logbook } from "../../src/adopt/recheck/recheck";
import type { SheetCells } from "../../src/adopt/recognising/sheet-cells";
import type { Finding } from "../../src/adopt/recheck/reporting/finding";
import type { Book, BookCell, BookSheet } from "../../src/sheet/book";
import { planColumns } from "../../src/workbook/planning/logbook/add-columns";
import { mendable, planMending } from "../../src/workbook/planning/logbook/mend";
import type { Plan, Refusal } from "../../src/workbook/planning/plan";
import { isFileProblem, newXlsx, sayFile } from "../../src/xlsx";
import { type MadeLogbook, makeLogbook } from "../adopt/habits/logbook";
import { rechecked } from "../adopt/habits/through-pane";
import { openMemory } from "../host/open-memory";

export type Kind = Spelling | "put right";

/** One sheet as it goes to LibreOffice. */
export interface Asked {
  readonly made: MadeLogbook;
  /** Which of the logbook's own sheets. */
  readonly at: number;
  readonly kind: Kind;
  readonly name: string;
  readonly sheet: BookSheet;
  /** Of columns that are added: every one that can be had, with what is lacking for the others. */
  readonly offered: readonly Offer[];
  /** What the re-check found on the sheet, and the columns that are put right beside. */
  readonly findings: readonly Finding[];
  readonly mended: readonly number[];
  readonly plan: Plan | Refusal;
}

function sheetOf(cells: SheetCells, name: string): BookSheet {
  const rows = cells.values.map((line, row) =>
    line.map((value, column): BookCell | null => {
      const formula = cells.formulas[row]?.[column] ?? "";
      const format = cells.formats[row]?.[column] ?? "General";
      if (formula !== "") return { formula, format };
      return value === "" ? null : { value: value as string | number, format };
    }),
  );
  return { name, rows, columnWidths: [], tables: [], frozenRows: 0 };
}

/** With the planned cells in it. */
function withPlanned(sheet: BookSheet, plan: Plan | Refusal): BookSheet {
  if (!("steps" in plan)) return sheet;
  const rows = sheet.rows.map((row) => [...row]);
  for (const step of plan.steps) {
    if (step.do !== "set-cells") continue;
    step.contents.forEach((line, down) => {
      line.forEach((content, across) => {
        const row = (rows[step.block.row + down] ??= []);
        while (row.length < step.block.column + across) row.push(null);
        if (content.kind === "formula")
          row[step.block.column + across] = { formula: content.formula };
        if (content.kind === "value" && typeof content.value !== "object")
          row[step.block.column + across] = { value: content.value };
      });
    });
  }
  return { ...sheet, rows };
}

async function asked(
  made: MadeLogbook,
  { mapping, cells }: Logbook,
  kind: Kind,
  all: readonly Finding[],
): Promise<Asked> {
  const at = made.sheets.findIndex((each) => each.cells === cells);
  const name = `${String(made.seed)} ${String(at)} ${kind}`;
  const before = sheetOf(cells, mapping.sheet);
  const host = openMemory({ name, sheets: [before] });
  const findings = all.filter(({ sheet }) => sheet === mapping.sheet);
  const columns = mendable(all, { mapping, cells }).map(({ column }) => column);
  const mended = [...new Set(columns)].sort((a, b) => a - b);
  const offered = kind === "put right" ? [] : offers(mapping, cells, kind);
  const plan =
    kind === "put right"
      ? await planMending(host, { mapping, cells }, all)
      : await planColumns(host, mapping, offered);
  return {
    made,
    at,
    kind,
    name,
    offered,
    findings,
    mended,
    plan,
    sheet: { ...withPlanned(before, plan), name },
  };
}

/** A logbook's sheets: with plain columns, with columns of our functions, put right. */
export async function askedOf(seed: number): Promise<Asked[]> {
  // Makers who leave it open whether lye is pure are told what is lacking.
  const made = makeLogbook(seed, { rows: 12, mistakes: 0.3 });
  const { report, books } = await rechecked(made);
  const kinds: readonly Kind[] = ["plain", "functions", "put right"];
  return Promise.all(
    books.flatMap((book) => kinds.map((kind) => asked(made, book, kind, report.findings))),
  );
}

export function fileOf(all: readonly Asked[]): Uint8Array {
  const book: Book = { name: "Habits", sheets: all.map(({ sheet }) => sheet) };
  const file = newXlsx(book);
  if (isFileProblem(file)) throw new Error(sayFile(file));
  return file;
}
