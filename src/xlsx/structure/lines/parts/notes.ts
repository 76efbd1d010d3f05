/** Notes and threaded comments: with their cells they move, and go. */
import { splice } from "../../../../sheet/formula/splice";
import type { Package } from "../../../package/package";
import { attribute } from "../../../xml/scan";
import { descendants, readTree } from "../../../xml/tree";
import { tagOf, without } from "../in-place";
import type { Lines } from "../lines";
import { movedAreas } from "../refs";

/** @param local "comment" or "threadedComment" */
export function moveNotes(
  file: Package,
  part: string,
  local: "comment" | "threadedComment",
  lines: Lines,
): void {
  const text = file.need(part);
  const changes = descendants(readTree(part, text), local).flatMap((node) => {
    const ref = attribute(node, "ref");
    if (ref === undefined) return [];
    const now = movedAreas(ref, lines);
    return now === undefined ? [without(node)] : tagOf(text, node, { ref: now });
  });
  file.set(part, splice(text, changes));
}
