/** The parts of the sheet whose lines move: each kind by what knows it. */
import type { Sheet } from "../../model";
import type { Package } from "../../package/package";
import { relationshipsOf } from "../../package/relationships";
import type { Lines } from "./lines";
import { moveBoxes } from "./parts/boxes";
import { moveDrawing } from "./parts/drawings";
import { moveNotes } from "./parts/notes";
import { movePivot } from "./parts/pivots";

const lastStep = (type: string): string => type.slice(type.lastIndexOf("/") + 1);

function movePart(file: Package, kind: string, part: string, lines: Lines): void {
  switch (kind) {
    case "comments":
      return moveNotes(file, part, "comment", lines);
    case "threadedComment":
      return moveNotes(file, part, "threadedComment", lines);
    case "vmlDrawing":
      return moveBoxes(file, part, lines);
    case "drawing":
      return moveDrawing(file, part, lines);
    case "pivotTable":
      return movePivot(file, part, lines);
  }
}

export function moveOwnParts(file: Package, sheet: Sheet, lines: Lines): void {
  for (const { type, target, isOutside } of relationshipsOf(file, sheet.part)) {
    if (!isOutside && file.has(target)) movePart(file, lastStep(type), target, lines);
  }
}

/** All parts that the sheet leads to: in them an address without a sheet is one of its own. */
export function ledToBy(file: Package, sheet: Sheet): ReadonlySet<string> {
  const found = new Set<string>();
  const waiting = [sheet.part];
  for (let part = waiting.pop(); part !== undefined; part = waiting.pop()) {
    for (const { target, isOutside } of relationshipsOf(file, part)) {
      if (isOutside || found.has(target)) continue;
      found.add(target);
      waiting.push(target);
    }
  }
  return found;
}
