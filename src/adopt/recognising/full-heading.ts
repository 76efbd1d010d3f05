/** A heading with what stands above and below it: "Titres 1 (mL)". */
import type { TablePlace } from "./find-tables";
import { headingParts, unitAlone } from "./heading";
import { roles } from "./roles";
import { heldCell, type SheetCells } from "./sheet-cells";
import { isElsewhere, isUnread, speaksFor } from "./words/speaks-for";

const textAt = (cells: SheetCells, row: number | undefined, column: number): string => {
  if (row === undefined) return "";
  const { value } = heldCell(cells, row, column);
  return typeof value === "object" ? "" : String(value).trim();
};

/** The words above a heading that is only a number or a unit: the nearest to the left in the row above. */
function groupWords(cells: SheetCells, place: TablePlace, column: number): string {
  for (let at = column; at >= place.firstColumn; at -= 1) {
    const words = textAt(cells, place.groupRow, at);
    if (words !== "") return words;
    if (!isBare(textAt(cells, place.headingRow, at))) return "";
  }
  return "";
}

const isBare = (heading: string): boolean =>
  /^\(?\d{1,2}(?:st|nd|rd|th|[ªº°.])?\)?[\s,]*[([]?\s*(?:m?l|cc|mls)?\s*[)\]]?$/i.test(heading) ||
  /^(?:no\.?|run|rep|#)?\s*#?\d{1,2}$/i.test(heading) ||
  /^(?:i{1,3}|[abc])$/i.test(heading) ||
  heading === "";

/** How well the words say what the column is, whatever it may be. */
const clearness = (words: string): number => {
  const { text } = headingParts(words);
  return Math.max(0, ...roles.map(({ id }) => speaksFor(id, text, undefined)));
};

/** The group whose word stands further to the left, over empty cells; what stands over the first column alone is a title. */
function groupAbove(cells: SheetCells, place: TablePlace, column: number): string {
  for (let at = column - 1; at > place.firstColumn; at -= 1) {
    const words = textAt(cells, place.groupRow, at);
    if (words !== "") return words;
  }
  return "";
}

/** Headings that are written over two rows, nearly each of them. */
function isInTwoRows(
  cells: SheetCells,
  { groupRow, firstColumn, lastColumn }: TablePlace,
): boolean {
  let above = 0;
  for (let at = firstColumn; at <= lastColumn; at += 1)
    if (textAt(cells, groupRow, at) !== "") above += 1;
  return above >= 0.4 * (lastColumn - firstColumn + 1);
}

/** By so much a heading must say more with the group's words above it; and be no less clear with its own first words. */
const margin = { group: 0.2, above: 0.03, ownFirst: -0.25 } as const;

/** A heading that says as much needs no group. */
const clearAlone = 0.6;

/** Words above belong to a heading that says more with them than without: "Sample" over "mass". */
function wordsAbove(cells: SheetCells, place: TablePlace, column: number, own: string): string {
  const above = textAt(cells, place.groupRow, column);
  const isTwo = isInTwoRows(cells, place);
  const group = above === "" && !isTwo ? groupAbove(cells, place, column) : above;
  // a word that nobody knows is no less unknown under "Batch", and no batch
  if (group === "" || isUnread(headingParts(own).text)) return own;
  const both = `${group} ${own}`;
  if (isElsewhere(both, undefined)) return both;
  if (!isTwo && clearness(own) > clearAlone) return own;
  const more = clearness(both) - clearness(own);
  const least = above === "" ? margin.group : isTwo ? margin.ownFirst : margin.above;
  return more > least ? both : own;
}

export function fullHeading(cells: SheetCells, place: TablePlace, column: number): string {
  const own = textAt(cells, place.headingRow, column);
  const isLone = isBare(own);
  const group = isLone ? groupWords(cells, place, column) : "";
  const words = isLone
    ? [group, own].filter((each) => each !== "").join(" ")
    : place.groupRow === undefined
      ? own
      : wordsAbove(cells, place, column, own);
  const unit = textAt(cells, place.unitsRow, column);
  const named = unitAlone(unit);
  // "Litres made" over "US gal": the row of units is there to say it
  const said = unitAlone(words) ?? headingParts(words).unit;
  const isUnit =
    named !== undefined && (said === undefined || (said !== named && !unitAlone(words)));
  return isUnit ? `${words} (${unit.replace(/[()[\]]/g, "")})`.trim() : words;
}
