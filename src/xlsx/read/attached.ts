/** Cells that something of the file hangs on: links, notes, and threads of comments. */
import type { Area } from "../../sheet/area";
import { readArea } from "../cell-address";
import type { Note } from "../model";
import { relationshipTypes } from "../package/names";
import type { Package } from "../package/package";
import { relationshipsOf } from "../package/relationships";
import { attribute } from "../xml/scan";
import { childOf, childrenOf, type Node, readTree } from "../xml/tree";

const areasOf = (nodes: readonly Node[]): Area[] =>
  nodes.flatMap((node) => readArea(attribute(node, "ref") ?? "") ?? []);

/** The parts that hold the threads of comments of a sheet. */
export const threadParts = (file: Package, sheetPart: string): string[] =>
  relationshipsOf(file, sheetPart).flatMap(({ type, target, isOutside }) =>
    type === relationshipTypes.threadedComments && !isOutside ? [target] : [],
  );

export function readAttached(
  file: Package,
  sheetPart: string,
  frame: Node,
  notes: readonly Note[],
): Area[] {
  const links = areasOf(childrenOf(childOf(frame, "hyperlinks"), "hyperlink"));
  const threads = threadParts(file, sheetPart).flatMap((part) =>
    file.has(part) ? areasOf(childrenOf(readTree(part, file.need(part)), "threadedComment")) : [],
  );
  const ofNotes = notes.map(({ row, column }) => ({ row, column, rows: 1, columns: 1 }));
  return [...links, ...threads, ...ofNotes];
}
