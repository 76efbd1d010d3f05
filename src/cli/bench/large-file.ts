/** A file of many rows, for the figures that grow with them. */
import { unzipSync, zipSync } from "fflate";
import type { Book } from "../../sheet/book";
import { isFileProblem, newXlsx, sayFile } from "../../xlsx";

const line = (row: number): string => {
  const n = String(row);
  const typed = [2.4, 2.5, 2.45, 0.15, 0.1, 10].map(
    (value, at) => `<c r="${"ABCDEF".charAt(at)}${n}"><v>${String(value)}</v></c>`,
  );
  const formulas = [
    ["G", `_xldudf_TITRE_CORRECTED(A${n}:C${n},D${n})`, "2.3"],
    ["H", `_xldudf_TITRE_ACIDVALUE(G${n},E${n},F${n})`, "1.2903"],
    ["I", `_xldudf_TITRE_CATALYST(100,H${n},"KOH",90,0.765)`, "993.37"],
  ].map(([column = "", f = "", v = ""]) => `<c r="${column}${n}"><f>${f}</f><v>${v}</v></c>`);
  return `<row r="${n}">${typed.join("")}${formulas.join("")}</row>`;
};

const sheet = "xl/worksheets/sheet1.xml";

/** A file of one sheet, Log, with these rows as they are written in its part. */
export function fileOf(rows: readonly string[]): Uint8Array {
  const one = { name: "Log", rows: [], columnWidths: [], tables: [], frozenRows: 0 };
  const book: Book = { name: "Log", sheets: [one] };
  const empty = newXlsx(book);
  if (isFileProblem(empty)) throw new Error(sayFile(empty));
  const parts = unzipSync(empty);
  const text = new TextDecoder().decode(parts[sheet]);
  const filled = text.replace(
    /<sheetData\/>|<sheetData><\/sheetData>/,
    `<sheetData>${rows.join("")}</sheetData>`,
  );
  return zipSync({ ...parts, [sheet]: new TextEncoder().encode(filled) });
}

/** @param rows each of six typed figures and three formulas of ours */
export const largeFile = (rows: number): Uint8Array =>
  fileOf(Array.from({ length: rows }, (_, at) => line(at + 2)));
