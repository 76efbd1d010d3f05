/** A saved file read back: does each cell hold what was asked of it, and every other what it held? */
import { cellName } from "../../sheet/cell-name";
import type { Cell, CellValue, Edit, SetCell } from "../../xlsx";
import { keyOf, type OpenedFile } from "./opened-file";

/** Errors newer than the format are held as #VALUE!. */
function isHeld(asked: CellValue, found: CellValue | undefined): boolean {
  if (typeof asked !== "object") return asked === (found ?? "");
  if (typeof found !== "object") return false;
  return found.error === asked.error || found.error === "#VALUE!";
}

function isAsAsked({ content }: SetCell, cell: Cell | undefined): boolean {
  switch (content.kind) {
    case "value":
      if (typeof content.value === "object" && "date" in content.value) return true;
      return cell?.formula === undefined && isHeld(content.value, cell?.value);
    case "formula":
      return (
        cell?.formula !== undefined &&
        (content.result === undefined
          ? cell.value === undefined
          : isHeld(content.result, cell.value))
      );
    case "result":
      return isHeld(content.value, cell?.value);
    case "nothing":
      // what was emptied may be where a formula answers now
      return (
        !cell || (cell.formula === undefined && (!!cell.spilledFrom || cell.value === undefined))
      );
    default:
      return true;
  }
}

type Sheets = ReadonlyMap<string, ReadonlyMap<string, Cell>>;

const cellsOf = ({ sheets }: Pick<OpenedFile, "sheets">): Sheets =>
  new Map(
    sheets.map((sheet) => [
      sheet.name.toLowerCase(),
      new Map(sheet.cells.map((cell) => [keyOf(cell.row, cell.column), cell])),
    ]),
  );

const isSameValue = (a: CellValue | undefined, b: CellValue | undefined): boolean =>
  typeof a === "object" && typeof b === "object" ? a.error === b.error : a === b;

/** The first cell that was not asked for, and holds something else than before. */
function notAsBefore(before: OpenedFile, asked: ReadonlySet<string>, now: Sheets) {
  for (const { name, cells } of before.sheets) {
    const there = now.get(name.toLowerCase());
    for (const cell of cells) {
      const { row, column, formula, value } = cell;
      if (asked.has(placeOf(name, row, column))) continue;
      const found = there?.get(keyOf(row, column));
      // where another formula answers, or did, is told with that formula
      const from = [cell.spilledFrom, found?.spilledFrom].flatMap((each) => each ?? []);
      if (from.some((each) => asked.has(placeOf(name, each.row, each.column)))) continue;
      if (formula === found?.formula && isSameValue(value, found?.value)) continue;
      return `${name}!${cellName(row, column)}`;
    }
  }
  return undefined;
}

const placeOf = (sheet: string, row: number, column: number): string =>
  `${sheet.toLowerCase()}\n${keyOf(row, column)}`;

/**
 * The first cell that does not hold what it should, as a sheet and an address.
 * @param before the file that the edits were made to: what they do not name stays
 */
export function notAsAsked(
  edits: readonly Edit[],
  saved: OpenedFile,
  before: OpenedFile,
): string | undefined {
  const sheets = cellsOf(saved);
  const asked = new Set<string>();
  for (const edit of edits) {
    if (edit.do !== "set-cell") continue;
    asked.add(placeOf(edit.sheet, edit.row, edit.column));
    const cell = sheets.get(edit.sheet.toLowerCase())?.get(keyOf(edit.row, edit.column));
    if (!isAsAsked(edit, cell)) return `${edit.sheet}!${cellName(edit.row, edit.column)}`;
  }
  return notAsBefore(before, asked, sheets);
}
