/** Notes added to a sheet, be it the first or beside others. */
import { splice } from "../../sheet/formula/splice";
import { addContentType } from "../package/content-types";
import { contentTypes, relationshipTypes } from "../package/names";
import type { Package } from "../package/package";
import { addRelationship, targetOf } from "../package/relationships";
import { refuse } from "../problem";
import { appending } from "../xml/insert";
import { prefixed } from "../xml/tag";
import { childOf, childrenOf, type Node, readTree } from "../xml/tree";
import { intoSheet, type Placed } from "./frame";
import {
  boxesInBlock,
  boxXml,
  commentXml,
  emptyBoxes,
  emptyComments,
  ownNamespaces,
} from "./note-xml";
import type { SheetDraft } from "./sheet-draft";
import { relationshipId } from "./table/part-list";

/** The part of that kind which belongs to the sheet, made if there is none. */
function partOf(
  file: Package,
  sheetPart: string,
  kind: "comments" | "legacyDrawing",
  name: (number: number) => string,
  content: string,
): { readonly part: string; readonly made: string | undefined } {
  const there = targetOf(file, sheetPart, relationshipTypes[kind]);
  if (there !== undefined) return { part: there, made: undefined };
  const part = file.free(name);
  file.set(part, content);
  addContentType(file, part, contentTypes[kind]);
  return { part, made: addRelationship(file, sheetPart, relationshipTypes[kind], part) };
}

/** The author without a name, and where to add one if nobody is. */
function nameless(text: string, authors: Node) {
  const known = childrenOf(authors, "author");
  const index = known.findIndex((author) => author.text === "");
  if (index >= 0) return { author: index, changes: [] };
  const tag = prefixed(authors.prefix, "author");
  return { author: known.length, changes: [appending(text, authors, `<${tag}></${tag}>`)] };
}

function addWords(file: Package, sheet: SheetDraft): void {
  const { part } = partOf(
    file,
    sheet.listed.part,
    "comments",
    (number) => `xl/comments${String(number)}.xml`,
    emptyComments,
  );
  const text = file.need(part);
  const root = readTree(part, text);
  const list = childOf(root, "commentList");
  const authors = childOf(root, "authors");
  if (!list || !authors) return refuse({ code: "damaged", part, detail: "it holds no list" });
  const { author, changes } = nameless(text, authors);
  const added = sheet.notes.map((note) => commentXml(root.prefix, author, note)).join("");
  file.set(part, splice(text, [...changes, appending(text, list, added)]));
}

/** The number after the last box of a part. */
function nextBox(text: string, block: number): number {
  let last = block * boxesInBlock;
  for (const [, number] of text.matchAll(/_x0000_s(\d{1,9})/g))
    last = Math.max(last, Number(number));
  return last + 1;
}

/** The boxes; returns the relationship of their part when the sheet did not lead to one before. */
function addBoxes(file: Package, sheet: SheetDraft): string | undefined {
  const block = Math.max(1, sheet.listed.id);
  const { part, made } = partOf(
    file,
    sheet.listed.part,
    "legacyDrawing",
    (number) => `xl/drawings/vmlDrawing${String(number)}.vml`,
    emptyBoxes(block),
  );
  const text = file.need(part);
  const end = text.lastIndexOf("</xml>");
  // This old kind of part need not be well-formed, so only its end is looked for.
  if (end < 0) {
    return refuse({ code: "damaged", part, detail: "boxes of notes cannot be added" });
  }
  const first = nextBox(text, block);
  const namespaces = ownNamespaces(text);
  const boxes = sheet.notes.map((note, index) => boxXml(first + index, note, namespaces)).join("");
  file.set(part, text.slice(0, end) + boxes + text.slice(end));
  return made;
}

/** What the sheet's own part needs to show notes. */
export function addNotes(file: Package, sheet: SheetDraft, frame: Node): Placed[] {
  if (sheet.notes.length === 0) return [];
  addWords(file, sheet);
  const made = addBoxes(file, sheet);
  if (made === undefined || childOf(frame, "legacyDrawing")) return [];
  const tag = prefixed(frame.prefix, "legacyDrawing");
  return [intoSheet(frame, "legacyDrawing", `<${tag}${relationshipId(made)}/>`)];
}
