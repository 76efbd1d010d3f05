/** own-logbook.xlsx: what New makes on the page, for a spreadsheet program that has no such button. */
import { isFileProblem, newXlsx, sayFile } from "../../xlsx";
import { ownLogbook as book } from "../../workbook/own/own-logbook";
import type { Sample } from "./sample";

export const ownLogbook: Sample = {
  file: "own-logbook.xlsx",
  make() {
    const bytes = newXlsx(book());
    if (isFileProblem(bytes)) throw new Error(sayFile(bytes));
    return Promise.resolve(bytes);
  },
};
