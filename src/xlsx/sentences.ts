/** Every problem of a file or an edit, declared once: its code, its fields, and its sentence of 6 to 200 characters, for a person to act on. */
import { quoted } from "../core/problem/quoted";
import { limits } from "./limits";
import { type ShiftTrouble, shiftTroubles } from "./structure/lines/trouble";

const megabytes = limits.unpackedBytes / 1024 / 1024;
const cells = String(limits.cells);

const tableTroubles = {
  moved: "it begins elsewhere",
  smaller: "it is larger now",
  "has-totals": "it has a row of totals, which would have to move",
  "filled-from-outside": "its rows come from an outside source",
  "overlaps-table": "another table stands there",
  "too-small": "a table has a row of headings and at least one row below it",
  merged: "there are merged cells in it",
  "no-headings": "it has no row of headings",
};

const headingTroubles = {
  empty: "is empty",
  repeated: "stands there twice",
  "not-text": "is not a text",
  "too-long": "is longer than 255 characters",
};

export type TableTrouble = keyof typeof tableTroubles;
type HeadingTrouble = keyof typeof headingTroubles;

const kinds = { sheet: "a sheet", table: "a table", defined: "a defined name" } as const;

/** What one can do about a file that its own program may still read. */
const mend = "Save it again in its own program.";
/** What one can do about a file that no spreadsheet program makes. */
const distrust = "It is not opened: ask whoever sent it.";
const saveAs = "open it in its own program, save it as an Excel workbook (.xlsx), and open that";

/** A place is named so that its sentence stays one that is read at a glance. */
const short = (name: string): string => (name.length > 50 ? `${name.slice(0, 49)}…` : name);

export const sentences = {
  "not-a-workbook": () => `This file is not an .xlsx workbook: ${saveAs}.`,
  encrypted: () =>
    "This workbook is locked with a password: save a copy without one and open that.",
  "old-format": () =>
    "This is a workbook of the old kind (.xls): save it as an Excel workbook (.xlsx) and open that.",
  "binary-format": () =>
    "This is a binary workbook (.xlsb): save it as an Excel workbook (.xlsx) and open that.",
  "strict-format": () =>
    "This is a Strict Open XML workbook: save it as a plain Excel workbook (.xlsx) and open that.",
  "other-format": (p: { found: string }) =>
    `This file is ${p.found}, not an .xlsx workbook: ${saveAs}.`,
  damaged: (p: { part: string; detail: string }) =>
    `The file is damaged${p.part ? ` in ${quoted(p.part)}` : ""}: ${p.detail.slice(0, 90)}. ${mend}`,
  "unsafe-name": (p: { name: string }) =>
    `The file holds a part with an unsafe name, ${quoted(p.name)}. ${distrust}`,
  "repeated-name": (p: { name: string }) =>
    `The file holds two parts of the same name, ${quoted(p.name)}. ${mend}`,
  "too-large": () => `The workbook is larger than ${megabytes} MB unpacked: split it into several.`,
  "too-many-cells": () =>
    `The workbook has more than ${cells} cells: split it into several workbooks.`,
  "packed-to-harm": (p: { part: string }) =>
    `The part ${quoted(p.part)} of the file unpacks to far more than it should. ${distrust}`,
  "declares-entities": (p: { part: string }) =>
    `The part ${quoted(p.part)} of the file declares a document type, which no sound workbook does. ${distrust}`,
  "other-encoding": (p: { part: string; encoding: string }) =>
    `The part ${quoted(p.part)} of the file is written in ${quoted(p.encoding)}, and only UTF-8 is read here. ${mend}`,

  "no-sheet": (p: { name: string }) => `There is no sheet ${quoted(p.name)} in the workbook.`,
  "no-cells": (p: { sheet: string }) => `The sheet ${quoted(p.sheet)} is not a sheet of cells.`,
  "outside-sheet": (p: { cell: string }) => `${p.cell} lies outside what a sheet can hold.`,
  "rows-out-of-order": (p: { sheet: string }) =>
    `The rows of the sheet ${quoted(p.sheet)} are stored out of order, so nothing was changed in it.`,
  "in-merged-cells": (p: { cell: string; area: string }) =>
    `${p.cell} is covered by the merged cells ${p.area}: write in the first of them.`,
  "in-array": (p: { cell: string; area: string }) =>
    `${p.cell} is part of the array formula in ${p.area}: change its first cell.`,
  "not-empty": (p: { cell: string; wanted: string }) =>
    `${p.cell} is not empty, and ${p.wanted} would be written over it.`,
  "no-formula": (p: { cell: string }) =>
    `${p.cell} holds no formula, so it has no result to bring up to date.`,
  "not-as-meant": (p: { place: string }) =>
    `The new file was read back, and the formula of ${p.place.slice(0, 80)} is not the one that was meant: nothing was saved.`,
  "not-read-back": () => "The new file could not be read back: nothing was saved.",
  "broken-formula": (p: { cell: string; sentence: string }) => `${p.cell}: ${p.sentence}`,
  "not-a-number": (p: { cell: string }) => `${p.cell} would hold a figure that no cell can show.`,
  "text-too-long": (p: { cell: string }) =>
    `${p.cell} would hold more than the ${String(limits.text)} characters of a cell.`,
  "not-a-date": (p: { cell: string; given: string }) =>
    `${p.cell}: ${quoted(p.given)} is not a date a workbook can hold.`,
  "bad-name": (p: { kind: "sheet" | "table" | "defined"; name: string }) =>
    `The name ${quoted(p.name)} cannot be that of ${kinds[p.kind]}.`,
  "name-taken": (p: { name: string }) => `The name ${quoted(p.name)} is taken: choose another.`,
  "no-table": (p: { name: string }) => `There is no table ${quoted(p.name)} in the workbook.`,
  "table-area": (p: { table: string; area: string; trouble: TableTrouble }) =>
    `The table ${quoted(p.table)} cannot reach over ${p.area}: ${tableTroubles[p.trouble]}.`,
  "bad-heading": (p: { table: string; heading: string; trouble: HeadingTrouble }) =>
    `A heading of the table ${quoted(p.table)}, ${quoted(p.heading)}, ${headingTroubles[p.trouble]}.`,
  "heading-cell": (p: { cell: string; table: string }) =>
    `${p.cell} is a heading of the table ${quoted(p.table)}, and formulas may go by it: it cannot be changed here.`,
  "bad-length": (p: { table: string; given: number; needed: number }) =>
    `The table ${quoted(p.table)} needs ${p.needed} cells there, and ${p.given} were given.`,
  "bad-width": (p: { given: number }) =>
    `A column cannot be ${p.given} characters wide: 0 to 255 are allowed.`,
  "bad-height": (p: { given: number }) =>
    `A row cannot be ${p.given} points high: 0 to ${limits.height} are allowed.`,
  "note-there": (p: { cell: string }) => `${p.cell} has a note already.`,
  "filter-there": (p: { sheet: string; area: string }) =>
    `The sheet ${p.sheet} has a filter at ${p.area} already, and can have no other outside tables.`,
  "choice-there": (p: { cell: string }) => `${p.cell} has rules for what may be typed already.`,
  "choice-too-long": (p: { cell: string }) =>
    `The words to choose from for ${p.cell} hold a comma, or are longer than ${limits.choice} characters.`,
  "frozen-already": (p: { sheet: string }) =>
    `The sheet ${quoted(p.sheet)} has frozen rows or columns already.`,
  "sheets-locked": () =>
    "The workbook is protected: its sheets cannot be renamed, moved or deleted.",
  "last-sheet": (p: { sheet: string }) =>
    `The sheet ${quoted(p.sheet)} is the last one that is shown: a workbook needs one.`,
  "not-taken-along": (p: { sheet: string; what: string }) =>
    `The sheet ${quoted(p.sheet)} has ${p.what.slice(0, 60)}, which cannot be taken away with it here: delete it in your spreadsheet program.`,
  "ends-a-range": (p: { sheet: string }) =>
    `A formula goes over a range of sheets that ends at ${quoted(p.sheet)}, and would be another one: it cannot be moved there.`,
  "unknown-reference": (p: { part: string }) =>
    `The part ${quoted(p.part)} of the file refers to the sheet in a way that is not known here.`,
  "unreadable-formula": () =>
    "A formula that refers to the sheet cannot be read, so it could not follow.",
  "too-many-styles": () => "The workbook has as many cell formats as it can hold.",
  "cannot-shift": ({
    trouble,
    ...found
  }: {
    sheet: string;
    place: string;
    trouble: ShiftTrouble;
  }) => shiftTroubles[trouble]({ sheet: short(found.sheet), place: short(found.place) }),
  failed: (p: { detail: string }) =>
    `The file could not be worked on, and nothing was changed: ${quoted(p.detail)}.`,
} satisfies Readonly<Record<string, (fields: never) => string>>;

type Sentences = typeof sentences;

/** A code with what its sentence asks for. */
export type FileProblemFields = {
  [Code in keyof Sentences]: { readonly code: Code } & (Parameters<Sentences[Code]> extends [
    infer Fields,
  ]
    ? Fields
    : unknown);
}[keyof Sentences];
