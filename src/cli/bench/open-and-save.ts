/** A file opened, and saved with one edit, without a page: how the time grows with its rows. */
import { isFileProblem, openXlsx, patchXlsx, sayFile } from "../../xlsx";
import type { Measure } from "./figure";
import { growthOf } from "./growth";
import { largeFile } from "./large-file";

function opened(bytes: Uint8Array) {
  const workbook = openXlsx(bytes);
  if (isFileProblem(workbook)) throw new Error(sayFile(workbook));
  return workbook;
}

function saved(workbook: ReturnType<typeof opened>): void {
  const [sheet] = workbook.sheets;
  if (!sheet) throw new Error("the file has no sheet");
  const content = { kind: "value", value: 2.6 } as const;
  const bytes = patchXlsx(workbook, [
    { do: "set-cell", sheet: sheet.name, row: 1, column: 0, content },
  ]);
  if (isFileProblem(bytes)) throw new Error(sayFile(bytes));
}

const run = async () => [
  ...(await growthOf("open a file", (rows) => {
    const bytes = largeFile(rows);
    return () => opened(bytes);
  })),
  ...(await growthOf("save a file", (rows) => {
    const workbook = opened(largeFile(rows));
    return () => saved(workbook);
  })),
];

export const openAndSave: Measure = { name: "open and save", run };
