/** A file that was read, in the grid: laid out and worked out. */
import { listsIn } from "../choosing/lists";
import type { GridState } from "../file/grid-state";
import type { OpenedFile } from "../file/opened-file";
import type { Grid } from "../grid/mount";
import type { View } from "../grid/view";
import type { Page } from "../page";
import { drawn } from "./drawn";
import { filePart, largeFile } from "./file-part";
import type { News } from "./news";
import { untouched } from "./untouched";

type Part = Awaited<ReturnType<typeof filePart>>;

/** A file shown before, as an act has made it. */
interface Again {
  /** What was held in it; undefined where it is opened as any file is. */
  readonly again: Parameters<Part["layOutAgain"]>[1] | undefined;
  /** Where one is in it. */
  readonly view: View | undefined;
}

/**
 * @param tried which file of this visit it is: each is a unit of its own to the grid
 * @returns undefined where it could not be laid out; what was there before is then there still
 */
export async function laidOut(
  { name, size }: Pick<File, "name" | "size">,
  opened: OpenedFile,
  tried: number,
  page: Page,
  grid: Grid,
  news: News,
  { again, view }: Partial<Again> = {},
): Promise<GridState | undefined> {
  const { fileSnapshot, layOut, layOutAgain } = await filePart();
  news.progress(`Laying out ${name}.`, size > largeFile);
  await drawn();
  const show: Parameters<Part["layOut"]>[2] = (time, terms, isHeld) => {
    const snapshot = fileSnapshot(opened, {
      unit: `file-${String(tried)}-${String(time)}`,
      name,
      frozenColumns: !grid.isNarrow,
      isHeld,
    });
    const progress = (percent: number) => {
      news.progress(`Working out ${name}: ${String(percent)} %.`);
    };
    return grid.show(snapshot, terms, progress, view);
  };
  const state = await untouched(page, grid.guard, () =>
    again ? layOutAgain(opened, again, grid.holding, show) : layOut(opened, grid.holding, show),
  );
  if (state) grid.lists.ofFile = listsIn(opened.sheets);
  return state;
}
