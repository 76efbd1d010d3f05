/** Answers of the doors taken apart, so that a test that expects one kind says so when it gets the other. */
import {
  type Cell,
  type CellValue,
  type Edit,
  type FileProblem,
  isFileProblem,
  openXlsx,
  patchXlsx,
  sayFile,
  type Sheet,
  type Workbook,
} from "../../src/xlsx";
import { readCellName } from "../../src/xlsx/cell-address";
import { partsOf } from "./files";

const told = (found: FileProblem): Error =>
  new Error(`${sayFile(found)} ${JSON.stringify(found.fields)}`);

export function opened(bytes: Uint8Array): Workbook {
  const found = openXlsx(bytes);
  if (isFileProblem(found)) throw told(found);
  return found;
}

export function patched(given: Uint8Array | Workbook, edits: readonly Edit[]): Uint8Array {
  const found = patchXlsx(given, edits);
  if (isFileProblem(found)) throw told(found);
  return found;
}

/** The code of the problem; the answer itself when there is none. */
export const codeOf = (found: Workbook | Uint8Array | FileProblem): unknown =>
  isFileProblem(found) ? found.fields.code : found;

export function sheetIn(workbook: Workbook, name?: string): Sheet {
  const found = workbook.sheets.find((sheet) => sheet.name === (name ?? sheet.name));
  if (!found) throw new Error(`no sheet ${String(name)}`);
  return found;
}

export function cellIn(workbook: Workbook, address: string, sheet?: string): Cell | undefined {
  const place = readCellName(address);
  return sheetIn(workbook, sheet).cells.find(
    (cell) => cell.row === place?.row && cell.column === place.column,
  );
}

export const valueIn = (workbook: Workbook, address: string, sheet?: string) =>
  cellIn(workbook, address, sheet)?.value;

export const formulaIn = (workbook: Workbook, address: string, sheet?: string) =>
  cellIn(workbook, address, sheet)?.formula;

type CellEdit = Extract<Edit, { do: "set-cell" }>;

function at(address: string, sheet: string, content: CellEdit["content"]): CellEdit {
  const place = readCellName(address);
  if (!place) throw new Error(address);
  return { do: "set-cell", sheet, ...place, content };
}

export const set = (address: string, value: CellValue, sheet = "Data"): CellEdit =>
  at(address, sheet, { kind: "value", value });

export const setFormula = (
  address: string,
  formula: string,
  result: CellValue,
  sheet = "Data",
): CellEdit => at(address, sheet, { kind: "formula", formula, result });

export const setSpill = (
  address: string,
  formula: string,
  spilled: readonly (readonly CellValue[])[],
  sheet = "Data",
): CellEdit =>
  at(address, sheet, { kind: "formula", formula, result: spilled[0]?.[0] ?? "", spilled });

export const setResult = (address: string, value: CellValue, sheet = "Data"): CellEdit =>
  at(address, sheet, { kind: "result", value });

export const clear = (address: string, sheet = "Data"): CellEdit =>
  at(address, sheet, { kind: "nothing" });

/** The rows of the first sheet after some edits, as the file writes them. */
export function rowsAfter(bytes: Uint8Array, edits: readonly Edit[]): string {
  const text = partsOf(patched(bytes, edits))["xl/worksheets/sheet1.xml"] ?? "";
  return /<sheetData>(.*)<\/sheetData>/s.exec(text)?.[1] ?? text;
}
