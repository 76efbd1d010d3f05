/**
 * How the cells of a workbook of ours look where they are shown without their file: just as they do when that
 * is opened, so that an act, after which the file is shown, changes nothing else about the sheet.
 */
import type { IStyleData } from "@univerjs/core";
import type { BookCell, BookSheet } from "../sheet/book";
import { bookLook, styledLook } from "../xlsx/book-look";
import { newHeights } from "../xlsx/new-heights";
import type { Cell, Look, LookChange } from "../xlsx";
import { styleOf } from "./file/file-style";
import { columnPixels, rowDataOf, rowHeights, usualHeight, usualWidth } from "./file/row-heights";

/** As wide as a file's column of so many characters is drawn. */
export const columnWidth = columnPixels;

export const tableThemeName = "titrebook";

/** What every cell has. */
export const usualStyle: IStyleData = styleOf({ format: "General" });

/** Nothing that we make has borders of its own. */
type OurLook = Omit<LookChange, "borders">;

const lookWith = (change: OurLook | undefined, format: string | undefined): Look | undefined =>
  change || format !== undefined ? { format: format ?? "General", ...change } : undefined;

/** Of a cell that is written by itself. */
export function cellStyle({
  style,
  format,
}: Pick<BookCell, "style" | "format">): IStyleData | undefined {
  const look = lookWith(style && styledLook(style), format);
  return look && styleOf(look);
}

const lookAt = (sheet: BookSheet, row: number, column: number): Look | undefined => {
  const cell = sheet.rows[row]?.[column];
  return cell ? lookWith(bookLook(sheet, cell, { row, column }), cell.format) : undefined;
};

export function styleAt(sheet: BookSheet, row: number, column: number): IStyleData | undefined {
  const look = lookAt(sheet, row, column);
  return look && styleOf(look);
}

/** Of each row that is not as high as the usual one. */
export function rowsOf(sheet: BookSheet): ReturnType<typeof rowDataOf> {
  const looks: Look[] = [];
  const cells: Cell[] = [];
  for (const [row, each] of sheet.rows.entries()) {
    for (const [column, cell] of each.entries()) {
      const look = lookAt(sheet, row, column);
      if (!cell || !look) continue;
      const first = cell.results?.[0]?.[0] ?? cell.value;
      const value = typeof first === "object" ? undefined : first;
      cells.push({ row, column, value, look: looks.push(look) - 1 });
    }
  }
  const heights = newHeights(sheet);
  const widthOf = (column: number) => {
    const characters = sheet.columnWidths[column];
    return characters === undefined ? usualWidth : columnPixels(characters);
  };
  const needed = rowHeights({ cells, heights, merged: [] }, looks, widthOf, usualHeight);
  return rowDataOf(needed, heights);
}
