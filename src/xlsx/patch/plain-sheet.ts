/** The part of a sheet of our own: widths, frozen rows, and its cells from the top. */
import { cellName } from "../../sheet/cell-name";
import { limits } from "../limits";
import { namespaces } from "../package/names";
import { refuse } from "../problem";
import { encodeString, escapeText } from "../xml/escape";

export interface PlainCell {
  readonly column: number;
  readonly style: number;
  readonly text?: string;
  /** As files hold it. It has no result yet, and is marked to be worked out at the next occasion. */
  readonly formula?: string;
  readonly isArray?: boolean;
}

const space = (text: string): string => (/^\s|\s$|\n/.test(text) ? ' xml:space="preserve"' : "");

function cellXml(row: number, { column, style, text, formula, isArray }: PlainCell): string {
  const name = cellName(row, column);
  const dress = style === 0 ? "" : ` s="${String(style)}"`;
  if (formula !== undefined) {
    const array = isArray ? ` t="array" ref="${name}"` : "";
    return `<c r="${name}"${dress}><f${array} ca="1">${escapeText(formula)}</f></c>`;
  }
  if (text === undefined) return `<c r="${name}"${dress}/>`;
  const words = escapeText(encodeString(text));
  return `<c r="${name}"${dress} t="inlineStr"><is><t${space(text)}>${words}</t></is></c>`;
}

export interface PlainRow {
  readonly row: number;
  readonly cells: readonly PlainCell[];
  /** In points. */
  readonly height?: number;
}

const heightXml = (height: number | undefined): string =>
  height === undefined ? "" : ` ht="${String(height)}" customHeight="1"`;

const widthXml = (width: number, index: number): string =>
  `<col min="${String(index + 1)}" max="${String(index + 1)}" width="${String(width)}" customWidth="1"/>`;

/** All columns of a sheet that is no wider than this print on one page's width, in letters one can read. */
const pageCharacters = 200;

/** @param widths in characters, from the first column on */
export function plainSheet(rows: Iterable<PlainRow>, widths: readonly number[]): string {
  const data: string[] = [];
  let length = 0;
  for (const { row, cells, height } of rows) {
    const inside = cells.map((cell) => cellXml(row, cell)).join("");
    length += inside.length;
    if (length > limits.unpackedBytes) refuse({ code: "too-large" });
    data.push(`<row r="${String(row + 1)}"${heightXml(height)}>${inside}</row>`);
  }
  const isFitted = widths.reduce((sum, width) => sum + width, 0) <= pageCharacters;
  const properties = isFitted ? '<sheetPr><pageSetUpPr fitToPage="1"/></sheetPr>' : "";
  const fit = isFitted ? ' fitToHeight="0"' : "";
  const columns = widths.length === 0 ? "" : `<cols>${widths.map(widthXml).join("")}</cols>`;
  return `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<worksheet xmlns="${namespaces.main}">${properties}<sheetViews><sheetView workbookViewId="0"/></sheetViews><sheetFormatPr defaultRowHeight="15"/>${columns}<sheetData>${data.join("")}</sheetData><pageMargins left="0.5" right="0.5" top="0.6" bottom="0.6" header="0.3" footer="0.3"/><pageSetup paperSize="9" orientation="landscape"${fit}/></worksheet>`;
}
