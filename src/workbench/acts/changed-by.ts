/** What of the edits of a file somebody made, and not the working out alone. */
import type { Edit } from "../../xlsx";
import { keyOf } from "../file/opened-file";

const isByHand = (edit: Edit): boolean =>
  edit.do === "set-cell" ? edit.content.kind !== "result" : edit.do !== "work-out-on-opening";

/** In how many cells something was typed or changed; undefined where nothing was changed at all. */
export function changedBy(edits: readonly Edit[]): number | undefined {
  const made = edits.filter(isByHand);
  if (made.length === 0) return undefined;
  return new Set(
    made.flatMap((edit) =>
      edit.do === "set-cell" ? [`${edit.sheet}\n${keyOf(edit.row, edit.column)}`] : [],
    ),
  ).size;
}
