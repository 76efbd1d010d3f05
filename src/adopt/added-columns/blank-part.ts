/** The blank of a row in formulas: its own, the one above that a ditto mark means, or the day's. */
import { columnLetters } from "../../sheet/cell-name";
import { blankWordMeans, emptyBlankOf } from "../recognising/answers";
import { isDitto } from "../recognising/ditto";
import { columnOf, columnsOf, type LogbookMapping } from "../recognising/mapping";
import { heldCell, isHeld, type SheetCells } from "../recognising/sheet-cells";
import { blankWord, isNeutralised } from "../recognising/neutralised";
import { chosenBy, wordsIn } from "./column-words";
import type { Part } from "./part";

export interface BlankPart {
  readonly part: Part | undefined;
  /** The part is one value, not a range. */
  readonly isOne: boolean;
  /** What stands in the way of any formula; "" for nothing. */
  readonly lacks: string;
  /** What stands in the way of plain formulas alone: they would take a word or a gap for no blank. */
  readonly lacksPlain: string;
}

interface Facts {
  readonly isAsked: boolean;
  readonly hasDitto: boolean;
  readonly hasNeutralised: boolean;
  readonly hasWords: boolean;
  readonly hasZeros: boolean;
  /** In every row that holds one: the solvent took nothing. */
  readonly isZeroAlways: boolean;
  readonly isDated: boolean;
}

function factsOf(mapping: LogbookMapping, cells: SheetCells): Facts {
  const blanks = columnsOf(mapping, "blank");
  const titres = [...columnsOf(mapping, "titre"), ...columnsOf(mapping, "meanTitre")];
  const date = columnOf(mapping, "date");
  const facts = {
    written: 0,
    figures: 0,
    empty: 0,
    ditto: 0,
    neutralised: 0,
    words: 0,
    zeros: 0,
    undated: 0,
  };
  for (let row = mapping.place.firstRow; row <= mapping.place.lastRow; row += 1) {
    const held = blanks.map(({ column }) => heldCell(cells, row, column)).filter(isHeld);
    const isTitrated = titres.some(({ column }) => isHeld(heldCell(cells, row, column)));
    if (held.length > 0) facts.written += 1;
    else if (isTitrated) facts.empty += 1;
    for (const { value } of held) {
      if (value === 0) facts.zeros += 1;
      else if (typeof value === "number") facts.figures += 1;
      else if (isDitto(value)) facts.ditto += 1;
      else if (typeof value === "string" && isNeutralised(value)) facts.neutralised += 1;
      else facts.words += 1;
    }
    const day = date && heldCell(cells, row, date.column);
    if (isTitrated && (!day || !isHeld(day) || isDitto(day.value))) facts.undated += 1;
  }
  return {
    isAsked: facts.written > 0 && facts.empty > 0,
    hasDitto: facts.ditto > 0,
    hasNeutralised: facts.neutralised > 0,
    hasWords: facts.words > 0,
    hasZeros: facts.zeros > 0,
    isZeroAlways:
      facts.zeros > 0 && facts.figures + facts.ditto + facts.neutralised + facts.words === 0,
    isDated: facts.undated === 0,
  };
}

/** @param side the row's blank cells, as one range */
export function blankPart(
  mapping: LogbookMapping,
  cells: SheetCells,
  side: Part | undefined,
  onSheet: string,
): BlankPart {
  const columns = columnsOf(mapping, "blank");
  const [first] = columns;
  const as = (part: Part | undefined, isOne: boolean, lacksPlain = ""): BlankPart => ({
    part,
    isOne,
    lacks: "",
    lacksPlain,
  });
  if (!first || !side) return as(side, true);
  const lacking = (lacks: string): BlankPart => ({ ...as(side, false), lacks });
  const { isAsked, hasDitto, hasNeutralised, hasWords, hasZeros, isZeroAlways, isDated } = factsOf(
    mapping,
    cells,
  );
  const means = emptyBlankOf(mapping) ?? "unknown";
  // As the re-check reads them: among blanks that were read a 0 is one that was not filled in.
  const isZeroNone = isZeroAlways || (isAsked && means === "none");
  const isOpen = isAsked && means === "unknown";
  const inPlain = hasWords
    ? "figures in the blanks: words stand among them"
    : isOpen
      ? "what an empty blank means: say it in Check columns"
      : hasZeros && !isZeroNone
        ? "figures above 0 in the blanks: a 0 counts as not filled in"
        : "";
  const looksUp = hasDitto || (isAsked && (means === "day" || means === "above"));
  const letter = columnLetters(first.column);
  const own: Part = (row) => `${onSheet}${letter}${String(row)}`;
  const withZero: Part = (row) =>
    `IF(AND(ISNUMBER(${own(row)}),${own(row)}=0),"neutralised",${own(row)})`;
  if (hasZeros && isZeroNone && columns.length > 1)
    return lacking("the word neutralised in place of blanks of 0");
  if (isZeroAlways && means !== "none") return as(withZero, true, inPlain);
  const words = columns.flatMap(({ column }) => wordsIn(cells, mapping, column));
  const said = words.map((word) => [word, blankWordMeans(mapping, blankWord(word))] as const);
  if (said.some(([, each]) => each === "day" || each === "above"))
    return lacking("a figure for the blank in every row, in place of a word");
  const nothing = said.flatMap(([word, each]) =>
    each === "none" ? [[word, '"neutralised"'] as const] : [],
  );
  if (!looksUp && !(isAsked && means === "none")) {
    if (nothing.length === 0) return as(side, columns.length === 1, inPlain);
    if (columns.length === 1)
      return as((row) => chosenBy(own(row), nothing, own(row)), true, inPlain);
  }
  if (nothing.length > 0) return lacking("a figure for the blank in every row, in place of a word");
  if (columns.length > 1) return lacking("a blank in every row, or one column of blanks");
  if (hasDitto && hasNeutralised) return lacking("a figure for the blank in every row");
  const top = String(mapping.place.firstRow + 1);
  const above: Part = (row) => `${onSheet}${letter}$${top}:${letter}${String(row)}`;
  const isWritten: Part = (row) =>
    hasNeutralised ? `(${above(row)}<>"")` : `ISNUMBER(${above(row)})`;
  const last: Part = (row) => `LOOKUP(2,1/${isWritten(row)},${above(row)})`;
  if (!isAsked) return as(last, true, inPlain);
  switch (means) {
    case "above":
      return as(last, true, inPlain);
    case "none": {
      const written = hasDitto ? last : hasZeros ? withZero : own;
      return as((row) => `IF(${own(row)}="","neutralised",${written(row)})`, true, inPlain);
    }
    case "day": {
      const date = columnOf(mapping, "date");
      if (!date || !isDated) return lacking("a date in every row, for one blank for the day");
      const day = `${onSheet}${columnLetters(date.column)}`;
      const days = `${day}$${top}:${columnLetters(date.column)}`;
      return as(
        (row) =>
          `LOOKUP(2,1/((${days}${String(row)}=${day}${String(row)})*${isWritten(row)}),${above(row)})`,
        true,
        inPlain,
      );
    }
    default:
      return as((row) => `IF(${own(row)}="","",${last(row)})`, true, inPlain);
  }
}
