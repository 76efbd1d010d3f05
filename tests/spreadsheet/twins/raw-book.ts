/**
 * A workbook as bytes, with nothing between the test and the file: typed cells as they are, and
 * formulas whose results in the file are wrong on purpose, so that only a recalculation mends them.
 */
import { strToU8, zipSync } from "fflate";
import { columnLetters } from "../../../src/sheet/cell-name";
import { escapeAttribute, escapeText } from "../../../src/xlsx/xml/escape";

/** What a person typed, or a formula without its equals sign. */
export type RawCell = number | string | boolean | { readonly formula: string } | null;

/** A result no test expects. */
const spoilt = 999;

const namespace = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const packaging = "http://schemas.openxmlformats.org/package/2006";
const media = "application/vnd.openxmlformats-officedocument.spreadsheetml";

function cellXml(cell: RawCell, address: string): string {
  if (cell === null) return "";
  if (typeof cell === "number") return `<c r="${address}"><v>${cell}</v></c>`;
  if (typeof cell === "boolean") return `<c r="${address}" t="b"><v>${cell ? 1 : 0}</v></c>`;
  if (typeof cell === "string") {
    return `<c r="${address}" t="inlineStr"><is><t xml:space="preserve">${escapeText(cell)}</t></is></c>`;
  }
  return `<c r="${address}"><f>${escapeText(cell.formula)}</f><v>${spoilt}</v></c>`;
}

const sheetXml = (rows: readonly (readonly RawCell[])[]): string =>
  `<worksheet xmlns="${namespace}"><sheetData>${rows
    .map(
      (row, index) =>
        `<row r="${index + 1}">${row.map((cell, column) => cellXml(cell, `${columnLetters(column)}${index + 1}`)).join("")}</row>`,
    )
    .join("")}</sheetData></worksheet>`;

/** Sheets by name, rows of cells. */
export function rawBook(
  sheets: Readonly<Record<string, readonly (readonly RawCell[])[]>>,
): Uint8Array {
  const names = Object.keys(sheets);
  const each = (write: (name: string, place: number) => string) =>
    names.map((name, index) => write(name, index + 1)).join("");
  const parts: Record<string, string> = {
    "[Content_Types].xml": `<Types xmlns="${packaging}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Override PartName="/xl/workbook.xml" ContentType="${media}.sheet.main+xml"/>${each((_, n) => `<Override PartName="/xl/worksheets/sheet${n}.xml" ContentType="${media}.worksheet+xml"/>`)}</Types>`,
    "_rels/.rels": `<Relationships xmlns="${packaging}/relationships"><Relationship Id="rId1" Type="${office}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    "xl/workbook.xml": `<workbook xmlns="${namespace}" xmlns:r="${office}"><sheets>${each((name, n) => `<sheet name="${escapeAttribute(name)}" sheetId="${n}" r:id="rId${n}"/>`)}</sheets></workbook>`,
    "xl/_rels/workbook.xml.rels": `<Relationships xmlns="${packaging}/relationships">${each((_, n) => `<Relationship Id="rId${n}" Type="${office}/worksheet" Target="worksheets/sheet${n}.xml"/>`)}</Relationships>`,
  };
  names.forEach((name, index) => {
    parts[`xl/worksheets/sheet${index + 1}.xml`] = sheetXml(sheets[name] ?? []);
  });
  return zipSync(
    Object.fromEntries(Object.entries(parts).map(([name, text]) => [name, strToU8(text)])),
    { level: 1 },
  );
}
