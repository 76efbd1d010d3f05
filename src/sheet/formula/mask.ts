/**
 * Spellings the tokenizer does not take:
 * - a linked workbook by number with nothing between its bracket and the exclamation mark ([2]!NAME,
 *   as files hold functions of a link);
 * - a path in a quoted sheet name ('C:\lots\[May.xlsx]Log'!A1, as cells show a closed link);
 * - part of a table and then a space and another reference (T[a] T[b], what the two share);
 * - a sheet called TRUE or FALSE without quotation marks (TRUE!A1).
 * Before tokenizing, the characters in the way are replaced, one for one; positions stay, and every
 * token then takes its text from the original.
 */
const letter = "ª";
const sign = "+";

const numberedLink = /\[(\d+)\](?='?!)/g;
const quotedPath = /'(?:[a-z]|https?|file):[\\/](?:[^'"[]|'')*(?=\[(?:[^'"]|'')*'!)/gi;
const logicalSheet = /(?:TRUE|FALSE)(?=!)/gi;
const spaceAfterTable = /\](\s+)(?=[^\s[\],:])/g;

export const masked = (formula: string): string =>
  formula
    .replace(numberedLink, `${letter}$1${letter}`)
    .replace(logicalSheet, (word) => letter.repeat(word.length))
    .replace(quotedPath, (path) => path.replace(/:/g, letter))
    .replace(spaceAfterTable, (space) => "]".padEnd(space.length, sign));
