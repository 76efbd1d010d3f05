/**
 * A file laid out in the grid: once to see what comes to the same as in the file, and once more where
 * something does not, with that held from the start. So nothing is left of a wrong answer: no cells it
 * spilled over, nothing that read it.
 */
import type { GridState } from "../file/grid-state";
import type { OpenedFile } from "../file/opened-file";
import { sheetKey } from "../sheet-key";
import { withFilesDay } from "./afresh";
import { heldFile } from "./held-file";
import type { HeldTerms, IsHeld } from "./held-terms";
import type { Holding } from "./holding";
import type { HeldPlace } from "./marks";
import { differing } from "./oracle";

/** Shows the file; `time` tells one showing from the next. */
type Show = (time: number, terms: HeldTerms, isHeld: IsHeld) => Promise<GridState>;

export const stopped = "The workbook stopped working out when it was opened here.";

const hasHeldArray = (file: OpenedFile, isHeld: IsHeld): boolean =>
  file.sheets.some(({ name, cells }) =>
    cells.some(
      ({ row, column, array }) =>
        array && array.rows * array.columns > 1 && isHeld(sheetKey(name), row, column),
    ),
  );

/** What is held from the start, whatever comes of it. */
interface KnownHolds {
  readonly marks: readonly HeldPlace[];
  readonly isHeld: IsHeld;
  /** Nothing was worked out. */
  readonly isAll: boolean;
}

/**
 * A file after an act on its rows, columns or sheets: results that are others than in the file are no
 * wrong ones, so nothing is held for that but what was before.
 */
export async function layOutAgain(
  opened: OpenedFile,
  { marks, isHeld, isAll }: KnownHolds,
  holding: Holding,
  show: Show,
): Promise<GridState> {
  const file = heldFile(opened);
  const first = isAll ? undefined : await show(1, { file, marks }, isHeld);
  if (!first || first.isStopped) return show(2, { file, all: stopped }, () => true);
  const isHeldNow = holding.now();
  const isMore: IsHeld = (...at) => isHeldNow(...at) && !isHeld(...at);
  return hasHeldArray(opened, isMore) ? show(2, { file, marks }, isHeldNow) : first;
}

export async function layOut(opened: OpenedFile, holding: Holding, show: Show): Promise<GridState> {
  const file = heldFile(opened);
  const first = await show(1, { file }, () => false);
  if (first.isStopped) return show(2, { file, all: stopped }, () => true);
  const marks = differing(opened, first, holding);
  holding.holdToo(marks);
  const isHeld = holding.now();
  const state =
    marks.length > 0 || hasHeldArray(opened, isHeld)
      ? await show(2, { file, marks }, isHeld)
      : first;
  return withFilesDay(state, opened, holding.byTheClock());
}
