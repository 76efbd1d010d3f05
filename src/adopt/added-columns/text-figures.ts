/**
 * Figures that stand as text: "2,40" typed with a comma in a program that has points. They are read when
 * a logbook is understood, but no formula counts them, and a new column would come out empty.
 */
import { columnLetters } from "../../sheet/cell-name";
import type { LogbookMapping } from "../recognising/mapping";
import { roleOf } from "../recognising/roles";
import { heldCell, type SheetCells } from "../recognising/sheet-cells";
import { figureAndWords, numberFrom, type Commas } from "../recognising/typed-number";
import type { Part } from "./part";

export interface TextFigures {
  /** "C: ml KOH" */
  readonly name: string;
  readonly column: number;
  /** Undefined: a column. Otherwise the row of the one cell for all rows. */
  readonly row: number | undefined;
  /** The first of them, as it stands. */
  readonly first: string;
  /** At least half of the figures there are text. */
  readonly isMost: boolean;
}

const isTextFigure = (value: unknown, commas: Commas): value is string =>
  typeof value === "string" &&
  figureAndWords(value) !== undefined &&
  numberFrom(value, commas) !== undefined;

/** In the columns and lone cells that should hold figures. */
export function textFiguresIn(mapping: LogbookMapping, cells: SheetCells): TextFigures[] {
  const { place, commas } = mapping;
  const ofColumns = mapping.columns.flatMap(({ role, column, heading }) => {
    if (roleOf(role).holds !== "number") return [];
    const texts: string[] = [];
    let numbers = 0;
    for (let row = place.firstRow; row <= place.lastRow; row += 1) {
      const { value } = heldCell(cells, row, column);
      if (typeof value === "number") numbers += 1;
      else if (isTextFigure(value, commas)) texts.push(value);
    }
    const [first] = texts;
    if (first === undefined) return [];
    const name = `${columnLetters(column)}: ${heading}`;
    return [{ name, column, row: undefined, first, isMost: texts.length >= numbers }];
  });
  const alone = mapping.constants.flatMap(({ role, from }) => {
    if (from.kind !== "cell" || roleOf(role).holds !== "number") return [];
    const { row, column } = from;
    const { value } = heldCell(cells, row, column);
    if (!isTextFigure(value, commas)) return [];
    const name = `${columnLetters(column)}${String(row + 1)}: ${from.label}`;
    return [{ name, column, row, first: value, isMost: true }];
  });
  return [...ofColumns, ...alone];
}

const columnIndex = (letters: string): number =>
  [...letters].reduce((sum, each) => sum * 26 + each.charCodeAt(0) - 64, 0) - 1;

const references = /\$?([A-Z]{1,3})(\$?)(\d+)(?::\$?([A-Z]{1,3})\$?\d+)?/g;

/** Does a formula read it, in a row counted from 1? */
export function readsIt(formula: string, { column, row }: TextFigures): boolean {
  const plain = formula.replace(/"[^"]*"|'[^']*'/g, "");
  return [...plain.matchAll(references)].some(([, from = "", , at = "", to = from]) => {
    const isWithin = columnIndex(from) <= column && column <= columnIndex(to);
    return isWithin && (row === undefined || Number(at) === row + 1);
  });
}

/** What a formula lacks that would read them; "" for nothing. */
export function textInTheWay(part: Part, row: number, found: readonly TextFigures[]): string {
  const read = found.filter((each) => each.isMost && readsIt(part(row), each));
  const [first] = read;
  if (!first) return "";
  const names = read.map(({ name }) => name).join("; ");
  return `numbers in ${names}. What stands there is text ("${first.first}"), which no formula counts: turn it into numbers in the sheet, or type it again, then look again`;
}
