/** The list of sheets in the workbook's part, and what goes by a sheet's place in it. */
import { type Replacement, splice } from "../../../sheet/formula/splice";
import type { Package } from "../../package/package";
import { refuse } from "../../problem";
import { readWorkbookPart, type WorkbookPart } from "../../read/workbook-part";
import { attribute, count } from "../../xml/scan";
import { withAttribute } from "../../xml/tag";
import { childOf, childrenOf, type Node } from "../../xml/tree";
import { isSameSheet } from "./in-formula";

const nodes = ({ root }: WorkbookPart): Node[] => childrenOf(childOf(root, "sheets"), "sheet");

export const listedNode = (workbook: WorkbookPart, name: string): Node =>
  nodes(workbook).find((node) => isSameSheet(attribute(node, "name"), name)) ??
  refuse({ code: "no-sheet", name });

const tagWith = (text: string, node: Node, name: string, value: string): Replacement => ({
  start: node.start,
  end: node.openEnd,
  text: withAttribute(text.slice(node.start, node.openEnd), name, value),
});

/** Names of one sheet: they go with it. */
function names(workbook: WorkbookPart, placeOf: (old: number) => number): Replacement[] {
  const list = childOf(workbook.root, "definedNames");
  const all = childrenOf(list, "definedName");
  const isGone = (node: Node) => {
    const old = count(node, "localSheetId", -1);
    return old >= 0 && placeOf(old) < 0;
  };
  // a list of nothing is none to every program
  if (list && all.length > 0 && all.every(isGone)) {
    return [{ start: list.start, end: list.end, text: "" }];
  }
  return all.flatMap((node): Replacement[] => {
    const old = count(node, "localSheetId", -1);
    if (old < 0) return [];
    if (isGone(node)) return [{ start: node.start, end: node.end, text: "" }];
    return placeOf(old) === old
      ? []
      : [tagWith(workbook.text, node, "localSheetId", String(placeOf(old)))];
  });
}

function views(workbook: WorkbookPart, placeOf: (old: number) => number, next: number) {
  return childrenOf(childOf(workbook.root, "bookViews"), "workbookView").flatMap(
    (node): Replacement[] => {
      let tag = workbook.text.slice(node.start, node.openEnd);
      for (const name of ["activeTab", "firstSheet"]) {
        const old = count(node, name, -1);
        // where it does not say, it is the first
        const from = Math.max(0, old);
        const to = placeOf(from) < 0 ? next : placeOf(from);
        if (to !== from) tag = withAttribute(tag, name, String(to));
      }
      return [{ start: node.start, end: node.openEnd, text: tag }];
    },
  );
}

/**
 * Lists the sheets in another order, or without some.
 * @param order the old places, as they now come
 * @param next the new place of the sheet to show where the shown one goes
 */
export function relist(file: Package, order: readonly number[], next = 0): void {
  const workbook = readWorkbookPart(file);
  const { part, text } = workbook;
  const all = nodes(workbook);
  const placeOf = (old: number) => order.indexOf(old);
  const listed = all.map((node, place): Replacement => {
    const from = all[order[place] ?? -1];
    const now = from ? text.slice(from.start, from.end) : "";
    return { start: node.start, end: node.end, text: now };
  });
  file.set(
    part,
    splice(text, [...listed, ...names(workbook, placeOf), ...views(workbook, placeOf, next)]),
  );
}
