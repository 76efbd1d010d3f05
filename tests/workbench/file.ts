/** Files in the headless engine: opened, edited as in the grid, and saved, without a page. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { GridState } from "../../src/workbench/file/grid-state";
import type { Edits } from "../../src/workbench/file/edits-of";
import type { HeadlessWorkbook } from "../../src/workbench/engine/headless";
import type { Holding } from "../../src/workbench/holding/holding";
import "../../src/workbench/engine/node";
import { isFileProblem, openXlsx, patchXlsx, sayFile, type Workbook } from "../../src/xlsx";
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
  /** Which of its formulas are not worked out. */
  readonly holding: Holding;
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
  const { affectedIn } = await import("../../src/workbench/bar/held-list");
  const { arraysOf } = await import("../../src/workbench/file/opened-file");
  const { notAsAsked } = await import("../../src/workbench/file/verify");
  const { layOut } = await import("../../src/workbench/holding/lay-out");
  const { Holding } = await import("../../src/workbench/holding/holding");
  const workbook = opened(bytes);
  const holding = new Holding();
  let shown: HeadlessWorkbook | undefined;
  const before = await layOut(workbook, holding, async (time, terms, isHeld) => {
    shown?.close();
    const unit = `file-${String(time)}`;
    shown = await HeadlessWorkbook.openSnapshot(
      fileSnapshot(workbook, { unit, name: "file", frozenColumns: true, isHeld }),
      { holding, terms },
    );
    return gridState(shown.injector, shown.cells, holding);
  });
  const grid = shown as unknown as HeadlessWorkbook;
  const now = () => gridState(grid.injector, grid.cells, holding);
  const terms = {
    dates: workbook.dates,
    arrays: arraysOf(workbook),
    charactersOf: (pixels: number) => pixels / 8,
    affected: affectedIn({ holding, cells: grid.cells }),
  };
  const edits = () => Promise.resolve(editsOf(before, now(), terms));
  try {
    await test({
      workbook,
      grid,
      before,
      now,
      holding,
      edits,
      saved: async () => {
        const asked = (await edits()).edits;
        const made = patchXlsx(workbook, asked);
        if (isFileProblem(made)) throw new Error(sayFile(made));
        const wrong = notAsAsked(asked, opened(made), workbook);
        if (wrong !== undefined) throw new Error(`${wrong} does not hold what it should.`);
        return made;
      },
    });
  } finally {
    grid.close();
  }
}
