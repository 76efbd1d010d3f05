/** Addresses as files write them (B2, $A$1:C3) to rows and columns from 0, and back. */
import type { Area, Place } from "../sheet/area";
import { cellName, columnLetters } from "../sheet/cell-name";
import { sheetPrefix } from "../sheet/sheet-prefix";
import { limits } from "./limits";

export const isOnSheet = (row: number, column: number): boolean =>
  row >= 0 && row < limits.rows && column >= 0 && column < limits.columns;

/** Undefined when it is no address, or lies outside what a sheet can hold. */
export function readCellName(name: string): Place | undefined {
  let column = 0;
  let at = 0;
  for (; at < 3; at++) {
    const letter = name.charCodeAt(at) & ~0x20;
    if (!(letter >= 65 && letter <= 90)) break;
    column = column * 26 + letter - 64;
  }
  const digits = name.length - at;
  if (at === 0 || digits < 1 || digits > 7) return undefined;
  let row = 0;
  for (; at < name.length; at++) {
    const digit = name.charCodeAt(at) - 48;
    if (!(digit >= 0 && digit <= 9)) return undefined;
    row = row * 10 + digit;
  }
  return isOnSheet(row - 1, column - 1) ? { row: row - 1, column: column - 1 } : undefined;
}

/** A1, or A1:C3 in either order of corners. */
export function readArea(name: string): Area | undefined {
  const [from = "", to = from, ...more] = name.replaceAll("$", "").split(":", 3);
  const first = readCellName(from);
  const last = readCellName(to);
  if (!first || !last || more.length > 0) return undefined;
  return {
    row: Math.min(first.row, last.row),
    column: Math.min(first.column, last.column),
    rows: Math.abs(first.row - last.row) + 1,
    columns: Math.abs(first.column - last.column) + 1,
  };
}

/** 'Log book'!, always in quotation marks: a sheet's name may read like a cell's. */
export const quotedSheet = (sheet: string): string => `'${sheet.replaceAll("'", "''")}'!`;

/** 'Log book'!$A$1:$C$3. */
export function absoluteArea(sheet: string, { row, column, rows, columns }: Area): string {
  const corner = (down: number, across: number): string =>
    `$${columnLetters(across)}$${String(down + 1)}`;
  const first = corner(row, column);
  const last = corner(row + rows - 1, column + columns - 1);
  return quotedSheet(sheet) + (first === last ? first : `${first}:${last}`);
}

export const isWithin = (area: Area, { row, column }: Place): boolean =>
  row >= area.row &&
  row < area.row + area.rows &&
  column >= area.column &&
  column < area.column + area.columns;

export const overlaps = (a: Area, b: Area): boolean =>
  a.row < b.row + b.rows &&
  b.row < a.row + a.rows &&
  a.column < b.column + b.columns &&
  b.column < a.column + a.columns;

/** Sheet and cell, as a sentence names it. */
export const named = (sheet: string, row: number, column: number): string =>
  sheetPrefix(sheet) + cellName(row, column);
