/**
 * The blanks of a row. Where some rows have one and others none, an empty cell means what was answered:
 * the blank of the day, the last one above, nothing to subtract. Without an answer the row is not checked.
 */
import { quoted } from "../../../core/problem/quoted";
import { blankWordMeans, emptyBlankOf } from "../../recognising/answers";
import type { LogbookMapping, MappedColumn } from "../../recognising/mapping";
import { blankWord, isNeutralised } from "../../recognising/neutralised";
import { figureFrom } from "../../recognising/typed-number";
import { heldCell, type SheetCells } from "../../recognising/sheet-cells";

type Blanks = readonly number[];

export interface BlanksRead {
  /** Undefined: no blank is known. Empty: there is nothing to subtract. */
  readonly blanks: Blanks | undefined;
  /** Why an empty blank is not known to mean anything; "" for nothing. */
  readonly why: string;
}

interface Above {
  readonly blanks: Blanks;
  readonly day: number | undefined;
}

const whys = {
  day: "no blank is written for that day",
  above: "no blank is written above",
  unknown: "its blank is empty, and what that means is not said",
  zero: "its blank is 0, and a 0 counts as not filled in",
  word: (word: string) => `its blank says ${quoted(word)}, and what that means is not said`,
} as const;

export function blanksReader(
  mapping: LogbookMapping,
  cells: SheetCells,
  columns: readonly MappedColumn[],
  listAt: (row: number) => readonly (number | undefined)[],
  dayAt: (row: number) => number | undefined,
): (row: number) => BlanksRead {
  const cellsAt = (row: number) =>
    columns.map(({ column, unit }) => ({ value: heldCell(cells, row, column).value, unit }));
  const isTypedZero = ({ value, unit }: ReturnType<typeof cellsAt>[number]): boolean =>
    figureFrom(value, mapping.commas, unit)?.value === 0;
  const own = (row: number): Blanks | undefined => {
    const filled = listAt(row).filter((each) => each !== undefined);
    if (filled.length > 0) return filled;
    const isSaid = cellsAt(row).some(
      (each) => typeof each.value === "string" && !isTypedZero(each) && isNeutralised(each.value),
    );
    return isSaid ? [] : undefined;
  };
  /** In all rows it says that the solvent took nothing; among other blanks it is none that was read. */
  const isZero = (row: number): boolean => own(row) === undefined && cellsAt(row).some(isTypedZero);
  const wordAt = (row: number): string =>
    cellsAt(row)
      .map(({ value }) => blankWord(value))
      .find((each) => each !== "") ?? "";
  const { firstRow, lastRow } = mapping.place;
  const ofEmpty = emptyBlankOf(mapping) ?? "unknown";
  const above: (Above | undefined)[] = [];
  const days: (number | undefined)[] = [];
  let isAnyWritten = false;
  // A date that stands once a day holds for the rows below it.
  let day: number | undefined;
  let last: Above | undefined;
  for (let row = firstRow; row <= lastRow; row += 1) {
    day = dayAt(row) ?? day;
    const blanks = own(row);
    if (blanks) {
      isAnyWritten = true;
      last = { blanks, day };
    }
    above.push(last);
    days.push(day);
  }
  return (row) => {
    const written = own(row);
    const word = wordAt(row);
    if (written && word === "") return { blanks: written, why: "" };
    const means = word === "" ? ofEmpty : (blankWordMeans(mapping, word) ?? "unknown");
    if (word !== "" && means === "unknown") return { blanks: undefined, why: whys.word(word) };
    if (word !== "" && means === "none") return { blanks: [], why: "" };
    if (!isAnyWritten && word === "") return { blanks: isZero(row) ? [] : undefined, why: "" };
    if (isZero(row) && means !== "none") return { blanks: undefined, why: whys.zero };
    if (means === "none") return { blanks: [], why: "" };
    const found = above[row - firstRow];
    const holds =
      found &&
      (means === "above" ||
        (means === "day" && found.day !== undefined && found.day === days[row - firstRow]));
    return holds ? { blanks: found.blanks, why: "" } : { blanks: undefined, why: whys[means] };
  };
}
