/** A file's tables and defined names, as the parts of a snapshot that the grid's plugins open. */
import type { IResources } from "@univerjs/core";
import type { DefinedName, Sheet } from "../../workbook/xlsx";
import { tablesOf } from "../tables";
import type { OpenedFile } from "./opened-file";

/** A row of totals is no part of a table to the grid: it would be counted among the rows. */
export const tablesResource = (sheets: readonly Sheet[]): IResources[number] =>
  tablesOf(
    sheets.map((sheet) => ({
      name: sheet.name,
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

/** Names that the format itself gives: print areas, filters. */
const isOwnName = ({ name, isHidden }: DefinedName): boolean =>
  !isHidden && !/^_xl/i.test(name);

export function namesResource(file: OpenedFile): IResources[number] {
  const names = file.names.filter(isOwnName).map((given, index) => {
    const id = `name-${String(index)}`;
    const isReference = !/[(+*^&]/.test(given.refersTo);
    return [
      id,
      {
        id,
        name: given.name,
        formulaOrRefString: isReference ? given.refersTo.slice(1) : given.refersTo,
        localSheetId: given.sheet ?? everywhere,
        comment: "",
      },
    ] as const;
  });
  return { name: "SHEET_DEFINED_NAME_PLUGIN", data: JSON.stringify(Object.fromEntries(names)) };
}
