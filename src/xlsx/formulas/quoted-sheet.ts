/**
 * The quotation marks of a sheet's name, where it was typed without those it needs: TRUE!A1, 1st!A1. A
 * reader of formulas may take it so; a program that opens a file calls the file damaged.
 */
import type { Reference } from "../../sheet/formula/tree";
import { isPlainSheetName } from "../../sheet/sheet-prefix";

/** The number or name of a linked workbook, and the sheet or sheets. */
const prefix = /^(\[[^\]]+\])?([^[\]'!]+)!/;

/** @example quotedSheet("1st!A1") // "'1st'!A1"; undefined when it stands as files hold it */
export function quotedSheet({ text, shape }: Reference): string | undefined {
  const [whole, link = "", sheets] = (shape === "structured" ? null : prefix.exec(text)) ?? [];
  if (whole === undefined || sheets === undefined) return undefined;
  if (sheets.split(":").every(isPlainSheetName)) return undefined;
  return `'${link}${sheets}'!${text.slice(whole.length)}`;
}
