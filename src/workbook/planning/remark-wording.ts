/** The sentences of a plan's remarks and refusals. */
import type { RecordTable, TableShape } from "../tables/column";
import { named } from "./fault-wording";

const list = (names: readonly string[]): string => {
  const first = names.slice(0, 4).map(named);
  const more = names.length - first.length;
  return first.join(", ") + (more > 0 ? ` and ${String(more)} more` : "");
};

export const remarkWords = {
  occupied: (row: number, held: readonly string[]): string =>
    `Row ${String(row)} is not free: it holds ${list(held.map((each) => `"${named(each)}"`))}. Nothing is written over.`,
  noFreeRow: (table: string): string =>
    `There is no free row in the table ${named(table)}, nor right below it: empty one, or move what stands below, then record again.`,
  formulasBack: (count: number): string =>
    count === 1
      ? "One empty cell of another row gets its column's formula back."
      : `${String(count)} empty cells of other rows get their column's formula back.`,
  keptInRow: (address: string, now: string): string =>
    `${address} holds "${named(now)}": it stays, and becomes part of the row.`,
  columnsMissing: (table: string, headings: readonly string[]): string =>
    `The table ${table} has no column for ${list(headings)}: that is not recorded.`,
  resultsMissing: (table: string, headings: readonly string[]): string =>
    `The table ${table} lacks the headings ${list(headings)}: those results are not shown in it.`,
  ownFormula: (heading: string): string =>
    `${heading} has another formula in this table: the new row gets the same one as the rows above.`,
  figureForFormula: (heading: string): string =>
    `${heading} has a formula in the rows above: this row gets the figure you entered instead.`,
  formulaAmongFigures: (heading: string): string =>
    `${heading} holds typed figures above: they stay, and this row gets the formula.`,
  otherOrder: (heading: string): string =>
    `${heading} stays empty: the columns its formula needs are missing or stand in another order.`,
  recordedBefore: (row: number, { what, tellingWords }: RecordTable): string =>
    `Row ${String(row)} already holds this ${what}: ${tellingWords}.`,
  batchesFollow: (batches: readonly string[], lot: string): string =>
    `${batches.length === 1 ? "Batch" : "Batches"} ${list(batches)} of that day or later ${batches.length === 1 ? "goes" : "go"} by the last titration of lot ${named(lot)}: amounts there will follow this one.`,
  otherSheetName: (taken: string, used: string): string =>
    `A sheet called ${named(taken)} is there already: the new one is called ${named(used)}.`,
  noBlends: (table: string): string =>
    `The table ${named(table)} of this workbook holds two lots at most: a new logbook holds any number. Or titrate the mix and record it as a lot of its own.`,
  inBlends: (batch: string): string =>
    `Blends already holds lots of batch ${named(batch)}: give this one another number.`,
  nameWithSigns: (batch: string): string =>
    `Batch ${named(batch)} holds a sign that spreadsheets read as a wildcard: use letters and digits.`,
  totals: (table: string): string =>
    `A row of totals stands right below the table ${named(table)}: switch it off, or add an empty row above it, then record again.`,
  partnerCopy: (table: string, what: string): string =>
    `This workbook is a partner copy: the table ${named(table)} cannot work out a new row. Record the ${what} in your own workbook, then share it again.`,
  notOurTable: (
    table: string,
    sheet: string,
    { name }: TableShape,
    missing: readonly string[],
  ): string =>
    `The table ${named(table)} on the sheet ${named(sheet)} lacks the headings ${list(missing)}, so it is not a logbook of ${name.toLowerCase()}: rename it, then record again.`,
};
