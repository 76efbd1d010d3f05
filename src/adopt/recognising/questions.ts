/** What a logbook says in words of its own: each kind is asked about once. */
import { isSized } from "../../core/quantity/measures";
import {
  amountMeant,
  amountWord,
  blankWordMeans,
  commasAnswered,
  emptyBlankOf,
  meantByItself,
  unitMeant,
  wordKey,
} from "./answers";
import { commasOf } from "../recheck/comma-judge";
import { hasDitto, withDittosRead } from "./ditto";
import { lacks } from "./lacks";
import { withoutLeft } from "./by-hand/left-out";
import { columnOf, columnsOf, type LogbookMapping } from "./mapping";
import { measured, sizedIn, sizeTyped } from "./measures/measured";
import { blankWord } from "./neutralised";
import { heldCell, isHeld, type SheetCells } from "./sheet-cells";
import type { SizeUnit } from "./shape";
import { figureAndWords, typedFigure } from "./typed-number";

export type Question =
  | { readonly ask: "unit"; readonly word: string; readonly rows: readonly number[] }
  /** How large a drop or a cup is. */
  | {
      readonly ask: "size";
      readonly word: string;
      readonly in: SizeUnit;
      /** Headings of the columns that are counted in it. */
      readonly headings: readonly string[];
    }
  /** Is "1,250" 1.25 or 1250? */
  | { readonly ask: "commas"; readonly text: string; readonly rows: readonly number[] }
  | { readonly ask: "blank"; readonly rows: readonly number[]; readonly hasDays: boolean }
  | {
      readonly ask: "word";
      readonly word: string;
      readonly rows: readonly number[];
      readonly hasDays: boolean;
    };

export interface Questions {
  readonly asked: readonly Question[];
  /** Ditto marks stand in a column that is used. */
  readonly hasDittos: boolean;
}

const textAt = (cells: SheetCells, row: number, column: number): string => {
  const { value } = heldCell(cells, row, column);
  return typeof value === "object" ? "" : String(value).trim();
};

function unitQuestions(mapping: LogbookMapping, cells: SheetCells): Question[] {
  const amount = columnOf(mapping, "oilAmount");
  const units = columnOf(mapping, "amountUnit");
  const ofHeading = amountWord(mapping);
  const inHeading = amount && columnOf(measured(mapping), "oilAmount")?.unit;
  if (!amount) return [];
  const found = new Map<string, { word: string; rows: number[] }>();
  for (let row = mapping.place.firstRow; row <= mapping.place.lastRow; row += 1) {
    const text = textAt(cells, row, amount.column);
    const parts = figureAndWords(text);
    if (!parts) continue;
    const ofRow = units ? textAt(cells, row, units.column) : "";
    const word =
      [parts.words, ofRow, ofHeading].find((each) => each !== "") ?? (units ? "" : undefined);
    if (word === undefined || meantByItself(mapping, word)) continue;
    if (word === "" && amountMeant(inHeading, 1)) continue;
    const known = found.get(wordKey(word)) ?? { word, rows: [] };
    known.rows.push(row);
    found.set(wordKey(word), known);
  }
  return [...found.values()].map((each) => ({ ask: "unit", ...each }));
}

function blankQuestion(mapping: LogbookMapping, cells: SheetCells): Question[] {
  const blanks = columnsOf(mapping, "blank");
  const titres = columnsOf(mapping, "titre");
  const date = columnOf(mapping, "date");
  const holds = (row: number, columns: typeof blanks): boolean =>
    columns.some(({ column }) => isHeld(heldCell(cells, row, column)));
  const empty: number[] = [];
  let written = 0;
  for (let row = mapping.place.firstRow; row <= mapping.place.lastRow; row += 1) {
    if (holds(row, blanks)) written += 1;
    else if (holds(row, titres)) empty.push(row);
  }
  const isAsked = written > 0 && empty.length > 0;
  return isAsked ? [{ ask: "blank", rows: empty, hasDays: date !== undefined }] : [];
}

/** Each word that stands where a blank should, once. */
function wordQuestions(mapping: LogbookMapping, cells: SheetCells): Question[] {
  const found = new Map<string, { word: string; rows: number[] }>();
  for (let row = mapping.place.firstRow; row <= mapping.place.lastRow; row += 1)
    for (const { column } of columnsOf(mapping, "blank")) {
      const word = blankWord(heldCell(cells, row, column).value);
      if (word === "") continue;
      const known = found.get(wordKey(word)) ?? { word, rows: [] };
      if (!known.rows.includes(row)) known.rows.push(row);
      found.set(wordKey(word), known);
    }
  const hasDays = columnOf(mapping, "date") !== undefined;
  return [...found.values()].map((each) => ({ ask: "word", ...each, hasDays }));
}

/** Each drop or cup once for what it measures: mL, or g of lye. */
function sizeQuestions({ columns, constants }: LogbookMapping): Question[] {
  const found = new Map<string, { word: string; in: SizeUnit; headings: string[] }>();
  const all = [
    ...columns.map(({ role, unit, heading }) => ({ role, unit, heading })),
    ...constants.map(({ role, unit, from }) => ({
      role,
      unit,
      heading: from.kind === "cell" ? from.label : "",
    })),
  ];
  for (const { role, unit, heading } of all) {
    if (!isSized(unit)) continue;
    const key = `${unit} ${sizedIn(role)}`;
    const known = found.get(key) ?? { word: unit, in: sizedIn(role), headings: [] };
    if (heading !== "") known.headings.push(heading);
    found.set(key, known);
  }
  return [...found.values()].map((each) => ({ ask: "size", ...each }));
}

function commaQuestion(mapping: LogbookMapping, cells: SheetCells): Question[] {
  const { asked } = commasOf(mapping, cells);
  return asked ? [{ ask: "commas", ...asked }] : [];
}

/** Has it its answer? */
function isAnswered(mapping: LogbookMapping, question: Question): boolean {
  switch (question.ask) {
    case "unit":
      return unitMeant(mapping, question.word) !== undefined;
    case "size":
      return (typedFigure(sizeTyped(mapping, question.word, question.in)) ?? 0) > 0;
    case "word":
      return blankWordMeans(mapping, question.word) !== undefined;
    case "commas":
      return commasAnswered(mapping) !== "unsaid";
    case "blank":
      return emptyBlankOf(mapping) !== undefined;
  }
}

export function questionsOf(mapping: LogbookMapping, all: SheetCells): Questions {
  const given = withoutLeft(mapping, all);
  const cells = withDittosRead(given, mapping.place);
  return {
    asked: [
      ...unitQuestions(mapping, cells),
      ...sizeQuestions(mapping),
      ...commaQuestion(mapping, cells),
      ...blankQuestion(mapping, cells),
      ...wordQuestions(mapping, cells),
    ],
    hasDittos: mapping.columns.some(
      ({ role, column }) =>
        role !== "other" && role !== "note" && hasDitto(given, mapping.place, column),
    ),
  };
}

/** How much is still to be said: what the arithmetic lacks, and words without an answer. */
export const openQuestions = (mapping: LogbookMapping, cells: SheetCells): number =>
  lacks(mapping, cells).length +
  questionsOf(mapping, cells).asked.filter((each) => !isAnswered(mapping, each)).length;
