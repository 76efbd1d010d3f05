/**
 * A sheet's name before an address, in quotation marks where it needs them: in formulas and in
 * sentences. Letters beyond A to Z stand in them too, for not every program takes those without.
 */
const plain = /^[A-Za-z_][A-Za-z0-9_]*$/;
const likeCell = /^(?:[A-Za-z]{1,3}\d+|[Rr]\d*(?:[Cc]\d*)?|[Cc]\d*|TRUE|FALSE)$/i;

/** Does every program read this name without quotation marks? */
export const isPlainSheetName = (sheet: string): boolean =>
  plain.test(sheet) && !likeCell.test(sheet);

/** @example sheetPrefix("Log book") // "'Log book'!" */
export const sheetPrefix = (sheet: string): string =>
  isPlainSheetName(sheet) ? `${sheet}!` : `'${sheet.replaceAll("'", "''")}'!`;
