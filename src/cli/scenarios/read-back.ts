/** A workbook that came back from "Check this Excel": its one sheet read. */
import { readReport, type Report, reportSheet } from "../../workbook/checking/report";
import { type CellValue, isFileProblem, openXlsx, sayFile } from "../../xlsx";

/** Throws a sentence when it is no such workbook. */
export function reportIn(bytes: Uint8Array, name: string): Report {
  const opened = openXlsx(bytes);
  if (isFileProblem(opened)) throw new Error(`${name}: ${sayFile(opened)}`);
  const sheet = opened.sheets.find((each) => each.name === reportSheet);
  const rows: (CellValue | undefined)[][] = [];
  for (const { row, column, value } of sheet?.cells ?? []) {
    const held = (rows[row] ??= []);
    held[column] = value;
  }
  const report = readReport(Array.from(rows, (row) => row ?? []));
  if (!report) throw new Error(`${name} has no sheet "${reportSheet}" as the check writes it.`);
  return report;
}
