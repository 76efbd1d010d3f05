/**
 * A workbook in no file has no name of its own: what was begun beside one is kept under a name that the
 * next one has as well. Which of them hold something that is under way?
 */
import type { KeptHere } from "../kept-here";
import { tasks } from "../tasks";
import { underWay } from "../under-way";

export interface Begun {
  readonly workbook: string;
  /** "Titrate", "Batch". */
  readonly tasks: readonly string[];
}

export async function underWayUnsaved(
  kept: Pick<KeptHere, "of" | "unsaved">,
): Promise<readonly Begun[]> {
  const found: Begun[] = [];
  for (const workbook of await kept.unsaved()) {
    const begun = await underWay(kept.of(workbook));
    const names = tasks.filter(({ id }) => begun.has(id)).map(({ name }) => name);
    if (names.length > 0) found.push({ workbook, tasks: names });
  }
  return found;
}
