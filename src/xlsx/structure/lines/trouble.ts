/** Why rows or columns cannot be put in or taken out, and the sentence for each reason. */

import { quoted } from "../../../core/problem/quoted";

/** `place` is what the reason is found at: a cell, a table, a part, a name. */
export interface ShiftTroubleFields {
  readonly sheet: string;
  readonly place: string;
}

const sheetOf = ({ sheet }: ShiftTroubleFields): string => quoted(sheet);

export const shiftTroubles = {
  "bad-lines": (p) =>
    `There are no ${p.place} of ${sheetOf(p)}: a whole number of at least 1, on the sheet, is needed.`,
  protected: (p) =>
    `The sheet ${sheetOf(p)} is protected: take the protection off in its own program first.`,
  "pushed-out": (p) =>
    `What stands in ${p.place} would be pushed off the end of the sheet: empty it first.`,
  "cuts-array": (p) =>
    `The array formula over ${p.place} would be cut in two: take in all of it, or none.`,
  "cuts-heading": (p) =>
    `The row of headings of the table ${p.place} cannot be deleted: its formulas go by the headings.`,
  "cuts-totals": (p) =>
    `The row of totals of the table ${p.place} cannot be deleted here: turn it off in the table.`,
  "empties-table": (p) =>
    `The table ${p.place} would have no row left: leave it one row, and clear that.`,
  "table-columns": (p) =>
    `Columns cannot be inserted or deleted in the table ${p.place}: only outside of tables.`,
  "cuts-filter": (p) =>
    `The row of headings of the filter over ${p.place} cannot be deleted: take the filter off first.`,
  "cuts-pivot": (p) => `The pivot table ${p.place} would be cut in two: leave room around it.`,
  "loses-source": (p) =>
    `The pivot table's source ${p.place} would be gone: take the pivot table away first.`,
  "from-outside": (p) =>
    `Rows of ${p.place} come from an outside source, which puts them where they stood before.`,
  revisions: (p) =>
    `The workbook keeps a record of who changed what (${p.place}): stop sharing it first.`,
  "connection-parameters": (p) =>
    `A connection of the workbook takes a parameter from ${p.place}, which could not follow.`,
  bindings: (p) =>
    `An add-in is bound to cells of the workbook (${p.place}), which could not follow.`,
  "unknown-part": (p) =>
    `The workbook holds a part that may name cells and is not understood here: ${p.place}.`,
  "unreadable-formula": (p) =>
    `The formula of ${p.place} cannot be read, so it could not follow: mend or clear it first.`,
  "too-many-rules": (p) =>
    `Rules over ${p.place} would have to be parted into too many: take fewer lines at once.`,
} satisfies Record<string, (fields: ShiftTroubleFields) => string>;

export type ShiftTrouble = keyof typeof shiftTroubles;
