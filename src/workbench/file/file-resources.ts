/** A file's tables and defined names, as the parts of a snapshot that the grid's plugins open. */
import type { IResources } from "@univerjs/core";
import type { Sheet } from "../../xlsx";
import { sheetKey } from "../sheet-key";
import { tablesOf } from "../snapshot-tables";
import { namesInGrid } from "./names-in-grid";
import type { OpenedFile } from "./opened-file";

/** A row of totals is no part of a table to the grid: it would be counted among the rows. */
export const tablesResource = (sheets: readonly Sheet[]): IResources[number] =>
  tablesOf(
    sheets.map((sheet) => ({
      name: sheetKey(sheet.name),
      tables: sheet.tables
        .filter(({ hasHeadings }) => hasHeadings)
        .map(({ name, area, hasTotals }) => ({
          ...area,
          name,
          rows: area.rows - (hasTotals ? 1 : 0),
        })),
    })),
  );

/** What the embedded spreadsheet calls a name that every sheet knows. */
const everywhere = "AllDefaultWorkbook";

export function namesResource(file: OpenedFile): IResources[number] {
  const names = namesInGrid(file.names).map((given, index) => {
    const id = `name-${String(index)}`;
    const isReference = !/[(+*^&]/.test(given.refersTo);
    return [
      id,
      {
        id,
        name: given.name,
        formulaOrRefString: isReference ? given.refersTo.slice(1) : given.refersTo,
        localSheetId: given.sheet === undefined ? everywhere : sheetKey(given.sheet),
        comment: "",
      },
    ] as const;
  });
  return { name: "SHEET_DEFINED_NAME_PLUGIN", data: JSON.stringify(Object.fromEntries(names)) };
}
