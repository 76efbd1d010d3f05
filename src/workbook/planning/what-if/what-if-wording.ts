/** The sentences of a what-if plan. */
import { named } from "../fault-wording";

const some = (addresses: readonly string[]): string => {
  const first = addresses.slice(0, 3).join(", ");
  const more = addresses.length - 3;
  return more > 0 ? `${first} and ${String(more)} more` : first;
};

export const whatIfWords = {
  holdsSomething: (address: string, now: string): string =>
    `${address} holds "${named(now)}", which would be lost.`,
  tooFull: (filled: readonly string[]): string =>
    `Too many cells there hold something (${some(filled)}): select an empty place, or take a new sheet.`,
  spillsOver: (filled: readonly string[]): string =>
    `One formula needs all of its cells empty, and something stands in ${some(filled)}: select an empty place, or take a new sheet.`,
  inTable: (address: string, table: string): string =>
    `${address} lies in the table ${named(table)}, which may hold columns of one formula only: select a place outside it, or take a new sheet.`,
  noRoom: (address: string): string =>
    `The sheet ends before ${address}: select a place further up or to the left, or take a new sheet.`,
  noSheet: (sheet: string): string => `The sheet ${named(sheet)} is gone: select a place again.`,
  noCharts: (program: string): string =>
    `A chart is drawn only in the spreadsheet program: ${program} gets the table without one.`,
  noLines: "There is no chart: no column has a dose at every size.",
  someLines: (left: readonly string[]): string =>
    `The chart leaves out what has no dose: ${some(left)}.`,
  covers: (filled: readonly string[]): string =>
    `The chart would lie over cells that hold something (${some(filled)}): they stay, and the chart can be moved.`,
};
