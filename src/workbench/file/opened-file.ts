/** What the page knows of an open file: all of it but its bytes, which stay with the worker. */
import type { Area, Workbook } from "../../xlsx";
import type { FileChart } from "../../xlsx/file-chart";

export interface OpenedFile extends Omit<Workbook, "file"> {
  readonly charts?: readonly FileChart[];
}

export const firstVisible = ({ sheets }: OpenedFile): string | undefined =>
  sheets.find(({ kind, state }) => kind === "cells" && state === "visible")?.name;

/** Of each sheet by name: the areas over which array formulas of the file answer, by their first cell. */
export type FileArrays = ReadonlyMap<string, ReadonlyMap<string, Area>>;

/** A cell's place within a sheet, as a key. */
export const keyOf = (row: number, column: number): string => `${String(row)},${String(column)}`;

export const arraysOf = (file: OpenedFile): FileArrays =>
  new Map(
    file.sheets.map((sheet) => [
      sheet.name,
      new Map(
        sheet.cells.flatMap((cell) =>
          cell.array ? [[keyOf(cell.row, cell.column), cell.array] as const] : [],
        ),
      ),
    ]),
  );
