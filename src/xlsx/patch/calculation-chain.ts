/**
 * The order of calculation lists the cells that hold formulas; one that holds none any more must not
 * stand there, or a program calls the file damaged. A formula that is missing there does no harm.
 */
import { splice } from "../../sheet/formula/splice";
import { removeContentType } from "../package/content-types";
import { relationshipTypes } from "../package/names";
import type { Package } from "../package/package";
import { removeRelationships, targetOf } from "../package/relationships";
import { attribute, count } from "../xml/scan";
import { withAttribute } from "../xml/tag";
import { childrenOf, readTree } from "../xml/tree";

export function dropPart(file: Package, workbookPart: string, part: string): void {
  file.remove(part);
  removeRelationships(file, workbookPart, part);
  removeContentType(file, part);
}

/** `dropped` holds cell names by the id of their sheet. */
export function forgetFormulas(
  file: Package,
  workbookPart: string,
  dropped: ReadonlyMap<number, ReadonlySet<string>>,
): void {
  const part = targetOf(file, workbookPart, relationshipTypes.calculationChain);
  const text = part === undefined ? undefined : file.text(part);
  if (part === undefined || text === undefined || dropped.size === 0) return;
  const cells = childrenOf(readTree(part, text), "c");
  const changes = [];
  let kept = 0;
  // An entry without a sheet is of the sheet of the entry before it.
  let sheet = 0;
  let writtenSheet = 0;
  for (const cell of cells) {
    sheet = count(cell, "i", sheet);
    const span = { start: cell.start, end: cell.end };
    if (dropped.get(sheet)?.has(attribute(cell, "r") ?? "")) {
      changes.push({ ...span, text: "" });
      continue;
    }
    if (attribute(cell, "i") === undefined && writtenSheet !== sheet) {
      const tag = text.slice(cell.start, cell.openEnd);
      changes.push({
        start: cell.start,
        end: cell.openEnd,
        text: withAttribute(tag, "i", String(sheet)),
      });
    }
    writtenSheet = sheet;
    kept += 1;
  }
  if (kept === 0) dropPart(file, workbookPart, part);
  else if (changes.length > 0) file.set(part, splice(text, changes));
}
