/**
 * The door: a workbook's bytes to those of a copy for somebody without the add-in, and a report of what
 * was done. The bytes given are only read.
 */
import type { Twin } from "../../functions/twin";
import { twinOf } from "../twins/twins";
import { relationshipTypes } from "../../xlsx/package/names";
import { Package } from "../../xlsx/package/package";
import { targetOf } from "../../xlsx/package/relationships";
import { removeWebExtensions } from "../../xlsx/package/web-extensions";
import { setCalculation } from "../../xlsx/patch/calculation";
import { addSheet } from "../../xlsx/patch/new-sheet";
import { plainSheet, type PlainRow } from "../../xlsx/patch/plain-sheet";
import { answer, type FileProblem } from "../../xlsx/problem";
import { dynamicMarks } from "../../xlsx/read/dynamic-arrays";
import { readSheet } from "../../xlsx/read/sheet";
import { readSharedStrings } from "../../xlsx/read/shared-strings";
import { fullBudget } from "../../xlsx/read/sheet-scan";
import { dateSystem, readWorkbookPart } from "../../xlsx/read/workbook-part";
import { WorkbookStyles } from "../../xlsx/styles/dresser";
import { Facts, freeName } from "./facts";
import { Ledger } from "./ledger";
import { dropFormulas } from "./numbers-copy";
import { type Reading, writePlainFormulas } from "./partner-copy";
import { readMeRows, readMeWidths } from "./read-me";
import { type ShareReport, Tally } from "./report";
import type { Workings } from "./workings/workings";

export interface ShareOptions {
  readonly kind: "partner" | "numbers";
  /** What the file is called, for the sheet that says what the copy is. */
  readonly fileName: string;
  /** The day it is made on, as it is to be shown; there is no clock here. */
  readonly day?: string;
  /** Only tests give another. */
  readonly twinOf?: (id: string) => Twin | undefined;
}

export interface Shared {
  readonly bytes: Uint8Array;
  readonly report: ShareReport;
}

function read(bytes: Uint8Array): Reading {
  const file = new Package(bytes);
  const workbook = readWorkbookPart(file);
  const { part, root } = workbook;
  const strings = targetOf(file, part, relationshipTypes.sharedStrings);
  const context = {
    strings: readSharedStrings(
      strings ?? "",
      strings === undefined ? undefined : file.text(strings),
    ),
    dynamicMarks: dynamicMarks(file, part),
    dates: dateSystem(root),
  };
  return { file, workbook, facts: new Facts(file, workbook), context, budget: fullBudget() };
}

function addOurSheet(
  { file }: Reading,
  name: string,
  rows: Iterable<PlainRow>,
  widths: readonly number[],
): void {
  const workbook = readWorkbookPart(file);
  const id = Math.max(0, ...workbook.sheets.map((sheet) => sheet.id)) + 1;
  const { part } = addSheet(file, workbook, name, id);
  file.set(part, plainSheet(rows, widths));
}

/** The rows of a sheet of ours, their formulas put down as meant. */
function* noted(rows: Iterable<PlainRow>, sheet: string, ledger: Ledger): Generator<PlainRow> {
  for (const line of rows) {
    for (const { column, formula, isArray } of line.cells) {
      const place = { row: line.row, column };
      const array = isArray ? { ...place, rows: 1, columns: 1 } : undefined;
      if (formula !== undefined) ledger.formula(sheet, place, formula, array);
    }
    yield line;
  }
}

/** How files mark the functions of add-ins. */
const marks = ["_xldudf_", "_xll."];

/** Another add-in's formulas, or ours that are left, would lose their results. */
function hasForeignFormulas({ file, workbook }: Reading, { left }: Tally): boolean {
  return (
    left.length > 0 ||
    workbook.sheets.some(({ part }) => {
      const text = file.text(part) ?? "";
      return marks.some((mark) => text.includes(mark));
    })
  );
}

function addSheets(
  reading: Reading,
  workings: Workings | undefined,
  tally: Tally,
  report: ShareReport,
  { fileName, day }: ShareOptions,
  ledger: Ledger,
): void {
  const styles = new WorkbookStyles(reading.file, reading.workbook.part);
  const looks = {
    title: styles.dressed(0, { look: "title" }),
    heading: styles.dressed(0, { look: "heading" }),
    words: styles.dressed(0, { look: "words" }),
    calculated: styles.dressed(0, { look: "calculated" }),
    caution: styles.dressed(0, { look: "caution" }),
  };
  styles.save();
  if (workings && report.workings !== undefined) {
    const rows = noted(workings.rows(looks), report.workings, ledger);
    addOurSheet(reading, report.workings, rows, workings.widths);
  }
  if (report.readMe !== undefined) {
    const rows = readMeRows({ facts: reading.facts, tally, report, fileName, day }, looks);
    addOurSheet(reading, report.readMe, rows, readMeWidths);
  }
}

function share(bytes: Uint8Array, options: ShareOptions): Shared {
  const reading = read(bytes);
  const { file, workbook, facts, context, budget } = reading;
  const tally = new Tally();
  const ledger = new Ledger();
  const workings =
    options.kind === "partner"
      ? writePlainFormulas(reading, options.twinOf ?? twinOf, tally, ledger)
      : undefined;
  if (options.kind === "numbers") {
    dropFormulas(file, workbook, facts, context, budget, tally);
    for (const { name } of workbook.sheets) ledger.emptied(name);
  }
  const isChanged = tally.formulas + tally.sentences > 0;
  const hasHelpers = workings !== undefined && !workings.isEmpty;
  const names = workbook.sheets.map(({ name }) => name);
  const report: ShareReport = {
    kind: options.kind,
    formulas: tally.formulas,
    sentences: tally.sentences,
    left: tally.left,
    sheets: [...tally.sheets],
    helperCells: workings?.helperCells ?? 0,
    workings: hasHelpers ? facts.workings : undefined,
    readMe: isChanged ? freeName("Read me", names) : undefined,
    unfilled: tally.unfilled,
    webExtensions: removeWebExtensions(file),
  };
  if (isChanged) {
    setCalculation(file, workbook.part, hasHelpers && !hasForeignFormulas(reading, tally));
    addSheets(reading, workings, tally, report, options, ledger);
  }
  const copy = file.toBytes();
  if (isChanged) {
    const given = file.fresh();
    ledger.check(copy, (name) => {
      const listed = workbook.sheets.find((sheet) => sheet.name === name);
      return listed && readSheet(given, listed, context, fullBudget()).sheet;
    });
  }
  return { bytes: copy, report };
}

/**
 * Makes a copy for somebody without the add-in.
 * @example shareWorkbook(bytes, { kind: "partner", fileName: "logbook.xlsx" }) // { bytes, report }, or a FileProblem
 */
export const shareWorkbook = (bytes: Uint8Array, options: ShareOptions): Shared | FileProblem =>
  answer(() => share(bytes, options));
