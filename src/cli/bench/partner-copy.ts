/** A partner copy of 60,000 formulas, beside unzipping and zipping the same file. */
import { unzipSync, zipSync } from "fflate";
import type { Book } from "../../workbook/book";
import { shareWorkbook } from "../../workbook/sharing";
import { isFileProblem, newXlsx, sayFile } from "../../workbook/xlsx";
import { type Figure, held } from "./figure";
import { byTurns, quietOf } from "./measure";

const rows = 20_000;

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

function largeFile(): Uint8Array {
  const one = { name: "Log", rows: [], columnWidths: [], tables: [], frozenRows: 0 };
  const book: Book = { name: "Log", sheets: [one] };
  const empty = newXlsx(book);
  if (isFileProblem(empty)) throw new Error(sayFile(empty));
  const parts = unzipSync(empty);
  const text = new TextDecoder().decode(parts[sheet]);
  const data = Array.from({ length: rows }, (_, at) => line(at + 2)).join("");
  const filled = text.replace(
    /<sheetData\/>|<sheetData><\/sheetData>/,
    `<sheetData>${data}</sheetData>`,
  );
  return zipSync({ ...parts, [sheet]: new TextEncoder().encode(filled) });
}

export async function partnerCopy(): Promise<Figure[]> {
  const bytes = largeFile();
  const copy = (): void => {
    const shared = shareWorkbook(bytes, { kind: "partner", fileName: "log.xlsx" });
    if (isFileProblem(shared)) throw new Error(sayFile(shared));
    if (shared.report.formulas !== 3 * rows) throw new Error("not every formula was converted");
  };
  const timed = await byTurns(
    [
      { name: "copy", run: copy },
      { name: "unzip and zip", run: () => zipSync(unzipSync(bytes)) },
    ],
    3,
  );
  const taken = quietOf(timed, "copy");
  const what = "partner copy of 60,000 formulas";
  return [
    held(what, taken / 1000, 2, "s"),
    held(what, taken / quietOf(timed, "unzip and zip"), 10, "x unzipping and zipping the file", 1),
  ];
}
