/** Which words stand in a column, and formulas that put ours in their place. */
import type { LogbookMapping } from "../recognising/mapping";
import { heldCell, type SheetCells } from "../recognising/sheet-cells";
import type { Part } from "./part";

const quoted = (text: string): string => `"${text.replace(/"/g, '""')}"`;

/** The different words of a column as a formula compares them: letter case does not count, spaces do. */
export function wordsIn(cells: SheetCells, { place }: LogbookMapping, column: number): string[] {
  const found = new Map<string, string>();
  for (let row = place.firstRow; row <= place.lastRow; row += 1) {
    const { value } = heldCell(cells, row, column);
    if (typeof value === "string" && value.trim() !== "" && !found.has(value.toLowerCase()))
      found.set(value.toLowerCase(), value);
  }
  return [...found.values()];
}

/** The longest text a formula can hold, and as many choices as anybody can still read. */
const longestText = 255;
const mostChoices = 12;

/** A choice by the word in a cell: IF(N5="imp gal",4.54609,1). */
export function chosenBy(
  cell: string,
  choices: readonly (readonly [word: string, chosen: string])[],
  otherwise: string,
): string {
  return choices.reduceRight(
    (rest, [word, chosen]) => `IF(${cell}=${quoted(word)},${chosen},${rest})`,
    otherwise,
  );
}

export const tooMany = (words: readonly string[]): boolean =>
  words.length > mostChoices || words.some((word) => word.length > longestText);

/**
 * Their words where ours are wanted: IF(N5="imp gal","uk_gal",N5). A word that nobody knows stays as it
 * is: the function that gets it names it, and no other row changes.
 */
export function translated(
  part: Part,
  words: readonly string[],
  ours: (word: string) => string | undefined,
): Part | undefined {
  const pairs = words.flatMap((word) => {
    const own = ours(word);
    return own === undefined ? [] : [[word, quoted(own)] as const];
  });
  if (tooMany(pairs.map(([word]) => word))) return undefined;
  return (row) => chosenBy(part(row), pairs, part(row));
}

export const always = (text: string | undefined): Part | undefined =>
  text === undefined ? undefined : () => quoted(text);
