/** How a sheet is printed: what its own part says of it, and the two names that the workbook keeps. */
import { type Replacement, splice } from "../../formula/splice";
import { absoluteArea } from "../cell-address";
import type { Package } from "../package/package";
import { readWorkbookPart } from "../read/workbook-part";
import { escapeText } from "../xml/escape";
import { appending } from "../xml/insert";
import { attribute } from "../xml/scan";
import { prefixed, withAttribute } from "../xml/tag";
import { childOf, childrenOf, type Node } from "../xml/tree";
import type { PrintSetup } from "./edits";
import { intoSheet, intoWorkbook, type Placed, within } from "./frame";
import type { SheetDraft } from "./sheet-draft";

/** A4; a sheet that names its paper keeps it. */
const paper = "9";

const retagged = (text: string, node: Node, change: (tag: string) => string): Placed =>
  within({
    start: node.start,
    end: node.openEnd,
    text: change(text.slice(node.start, node.openEnd)),
  });

/** The mark without which a width in pages is not heeded; it stands last in the sheet's properties. */
function fitted(text: string, frame: Node): Placed {
  const [outer, inner] = ["sheetPr", "pageSetUpPr"].map((name) => prefixed(frame.prefix, name));
  const mark = `<${inner ?? ""} fitToPage="1"/>`;
  const properties = childOf(frame, "sheetPr");
  const there = childOf(properties, "pageSetUpPr");
  if (there) return retagged(text, there, (tag) => withAttribute(tag, "fitToPage", "1"));
  if (properties) return within(appending(text, properties, mark));
  return intoSheet(frame, "sheetPr", `<${outer ?? ""}>${mark}</${outer ?? ""}>`);
}

function withSetup(tag: string, { landscape, fitToWidth }: PrintSetup): string {
  const turned =
    landscape === undefined
      ? tag
      : withAttribute(tag, "orientation", landscape ? "landscape" : "portrait");
  // As many pages down as it takes.
  return fitToWidth === true
    ? withAttribute(withAttribute(turned, "fitToWidth", "1"), "fitToHeight", "0")
    : turned;
}

export function printed(text: string, frame: Node, print: PrintSetup | undefined): Placed[] {
  if (!print || (print.landscape === undefined && print.fitToWidth !== true)) return [];
  const setup = childOf(frame, "pageSetup");
  const own = `<${prefixed(frame.prefix, "pageSetup")} paperSize="${paper}"/>`;
  const page = setup
    ? retagged(text, setup, (tag) => withSetup(tag, print))
    : intoSheet(frame, "pageSetup", withSetup(own, print));
  return print.fitToWidth === true ? [fitted(text, frame), page] : [page];
}

/** 'Log book'!$3:$4. */
const rowsText = (sheet: string, row: number, rows: number): string =>
  `'${sheet.replaceAll("'", "''")}'!$${String(row + 1)}:$${String(row + rows)}`;

/** ECMA-376 part 1, 18.2.5: names that programs keep for themselves. */
function namesOf(sheet: string, { area, repeatRows }: PrintSetup): (readonly [string, string])[] {
  const titles = repeatRows && rowsText(sheet, repeatRows.row, repeatRows.rows);
  return [
    ...(area ? [["_xlnm.Print_Area", absoluteArea(sheet, area)] as const] : []),
    ...(titles === undefined ? [] : [["_xlnm.Print_Titles", titles] as const]),
  ];
}

/** What is printed and which rows head each page: names known on one sheet alone. */
export function addPrintNames(file: Package, sheets: readonly SheetDraft[]): void {
  if (!sheets.some(({ print }) => print?.area ?? print?.repeatRows)) return;
  const { part, text, root, sheets: listed } = readWorkbookPart(file);
  const list = childOf(root, "definedNames");
  const tag = prefixed(root.prefix, "definedName");
  const replaced: Replacement[] = [];
  let added = "";
  for (const { listed: own, name: sheet, print } of sheets) {
    const place = String(listed.findIndex((each) => each.part === own.part));
    for (const [name, refersTo] of namesOf(sheet, print ?? {})) {
      const there = childrenOf(list, "definedName").find(
        (node) => attribute(node, "name") === name && attribute(node, "localSheetId") === place,
      );
      const written = `<${tag} name="${name}" localSheetId="${place}">${escapeText(refersTo)}</${tag}>`;
      if (there) replaced.push({ start: there.start, end: there.end, text: written });
      else added += written;
    }
  }
  const outer = prefixed(root.prefix, "definedNames");
  const grown = list
    ? appending(text, list, added)
    : intoWorkbook(root, "definedNames", `<${outer}>${added}</${outer}>`);
  file.set(part, splice(text, [...replaced, grown]));
}
