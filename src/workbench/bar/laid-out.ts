/** A file that was read, in the grid: laid out and worked out. */
import type { GridState } from "../file/grid-state";
import type { OpenedFile } from "../file/opened-file";
import type { Grid } from "../grid/mount";
import type { Page } from "../page";
import { drawn } from "./drawn";
import { filePart, largeFile } from "./file-part";
import type { News } from "./news";
import { untouched } from "./untouched";

/**
 * @param tried which file of this visit it is: each is a unit of its own to the grid
 * @returns undefined where it could not be laid out; what was there before is then there still
 */
export async function laidOut(
  { name, size }: File,
  opened: OpenedFile,
  tried: number,
  page: Page,
  grid: Grid,
  news: News,
): Promise<GridState | undefined> {
  const { fileSnapshot, layOut } = await filePart();
  news.progress(`Laying out ${name}.`, size > largeFile);
  await drawn();
  return untouched(page, grid.guard, () =>
    layOut(opened, grid.holding, (time, terms, isHeld) => {
      const snapshot = fileSnapshot(opened, {
        unit: `file-${String(tried)}-${String(time)}`,
        name,
        frozenColumns: !grid.isNarrow,
        isHeld,
      });
      return grid.show(snapshot, terms, (percent) => {
        news.progress(`Working out ${name}: ${String(percent)} %.`);
      });
    }),
  );
}
