/** Files in the headless engine: opened, edited as in the grid, and saved, without a page. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { GridState } from "../../src/workbench/file/grid-state";
import type { Edits } from "../../src/workbench/file/edits-of";
import type { HeadlessWorkbook } from "../../src/workbench/engine/headless";
import "../../src/workbench/engine/node";
import {
  isFileProblem,
  openXlsx,
  patchXlsx,
  sayFile,
  type Workbook,
} from "../../src/workbook/xlsx";
import { root } from "../rules/sources-of";

export const fixtures = [
  "charts",
  "dynamic",
  "office",
  "pivot",
  "prefixed",
  "threaded",
  "tidy",
] as const;

export const fixture = (name: string): Uint8Array =>
  new Uint8Array(readFileSync(join(root, "tests/second-opinion/xlsx", `${name}.xlsx`)));

export function opened(bytes: Uint8Array): Workbook {
  const workbook = openXlsx(bytes);
  if (isFileProblem(workbook)) throw new Error(sayFile(workbook));
  return workbook;
}

export interface FileInGrid {
  readonly workbook: Workbook;
  readonly grid: HeadlessWorkbook;
  readonly before: GridState;
  now(): GridState;
  edits(): Promise<Edits>;
  /** The file as it would be saved now. */
  saved(): Promise<Uint8Array>;
}

/** Opens a file in the grid for one test, and closes it after. */
export async function inGrid(
  bytes: Uint8Array,
  test: (file: FileInGrid) => Promise<void> | void,
): Promise<void> {
  const { HeadlessWorkbook } = await import("../../src/workbench/engine/headless");
  const { fileSnapshot } = await import("../../src/workbench/file/file-snapshot");
  const { gridState } = await import("../../src/workbench/file/grid-state");
  const { editsOf } = await import("../../src/workbench/file/edits-of");
  const { arraysOf } = await import("../../src/workbench/file/opened-file");
  const workbook = opened(bytes);
  const grid = await HeadlessWorkbook.openSnapshot(
    fileSnapshot(workbook, { unit: "file-1", name: "file", frozenColumns: true }),
  );
  const now = () => gridState(grid.injector, grid.cells);
  const before = now();
  const terms = {
    dates: workbook.dates,
    arrays: arraysOf(workbook),
    charactersOf: (pixels: number) => pixels / 7,
  };
  const edits = () => Promise.resolve(editsOf(before, now(), terms));
  try {
    await test({
      workbook,
      grid,
      before,
      now,
      edits,
      saved: async () => {
        const made = patchXlsx(workbook, (await edits()).edits);
        if (isFileProblem(made)) throw new Error(sayFile(made));
        return made;
      },
    });
  } finally {
    grid.close();
  }
}
