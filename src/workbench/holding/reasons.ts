/** Why a cell is not worked out here: by itself, or for what it reads. */
import { cellName } from "../../sheet/cell-name";
import { placeAt } from "./cell-keys";

export type Reason =
  | { readonly kind: "own"; readonly says: string }
  /** A cell it reads is not. */
  | { readonly kind: "reads"; readonly sheet: string; readonly key: number }
  /** The formula of another cell answers here. */
  | { readonly kind: "part"; readonly sheet: string; readonly key: number };

export const differs =
  "Worked out here, it would come to another figure than the file has: the file's is shown.";
export const circular = "It needs its own result to be worked out.";
export const doubtful =
  "Spreadsheet programs come to different results here, so this one is not saved: see what your own program says.";
export const unread = "Which cells it reads cannot be told.";
export const days1904 = "The workbook counts its days from 1904.";

const named = (sheet: string, key: number, from: string): string => {
  const { row, column } = placeAt(key);
  const address = cellName(row, column);
  return sheet === from ? address : `${sheet} ${address}`;
};

type NameOf = (sheet: string) => string;

/** Why a result is shown and not saved. @param from the sheet of the cell that has the reason */
export function sayDoubt(reason: Reason, from: string, sheetName: NameOf): string {
  if (reason.kind === "own") return reason.says;
  const cell = named(sheetName(reason.sheet), reason.key, from);
  return reason.kind === "reads"
    ? `It is worked out from ${cell}, whose result is not saved, and neither is this one.`
    : `The formula in ${cell} answers here, and its result is not saved.`;
}

/** @param from the sheet of the cell that has the reason */
export function sayReason(reason: Reason, from: string, sheetName: NameOf): string {
  if (reason.kind === "own") return reason.says;
  const cell = named(sheetName(reason.sheet), reason.key, from);
  return reason.kind === "reads"
    ? `It is worked out from ${cell}, which is grey too.`
    : `The formula in ${cell} answers here, and is not worked out.`;
}
