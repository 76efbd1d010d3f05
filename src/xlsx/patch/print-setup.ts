/** How a sheet is printed: what its own part says of it, and the two names that the workbook keeps. */
import { lastColumn } from "../../sheet/spreadsheet-limits";
import { columnLetters } from "../../sheet/cell-name";
import { type Replacement, splice } from "../../sheet/formula/splice";
import { absoluteArea, quotedSheet } from "../cell-address";
import type { Package } from "../package/package";
import { readWorkbookPart } from "../read/workbook-part";
import { escapeText } from "../xml/escape";
import { appending } from "../xml/insert";
import { attribute } from "../xml/scan";
import { prefixed, withAttribute } from "../xml/tag";
import { childOf, childrenOf, type Node } from "../xml/tree";
import type { PrintSetup } from "../../sheet/print-setup";
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

const pagesWide = (fit: PrintSetup["fitToWidth"]): string | undefined =>
  fit === undefined || fit === false ? undefined : String(Number(fit));

function withSetup(tag: string, { landscape, fitToWidth }: PrintSetup): string {
  const turned =
    landscape === undefined
      ? tag
      : withAttribute(tag, "orientation", landscape ? "landscape" : "portrait");
  // As many pages down as it takes.
  const pages = pagesWide(fitToWidth);
  return pages === undefined
    ? turned
    : withAttribute(withAttribute(turned, "fitToWidth", pages), "fitToHeight", "0");
}

/** A break goes right across, and stands above the row it names, which the format counts from 1 and we from 0. */
function pageBreak(text: string, frame: Node, row: number | undefined): Placed[] {
  if (row === undefined) return [];
  const [outer = "", inner = ""] = ["rowBreaks", "brk"].map((name) => prefixed(frame.prefix, name));
  const mark = `<${inner} id="${String(row)}" max="${String(lastColumn)}" man="1"/>`;
  const there = childOf(frame, "rowBreaks");
  if (!there) {
    const xml = `<${outer} count="1" manualBreakCount="1">${mark}</${outer}>`;
    return [intoSheet(frame, "rowBreaks", xml)];
  }
  const isThere = childrenOf(there, "brk").some((node) => attribute(node, "id") === String(row));
  if (isThere) return [];
  const counted = (tag: string, name: string): string =>
    withAttribute(tag, name, String(Number(attribute(there, name) ?? 0) + 1));
  return [
    retagged(text, there, (tag) => counted(counted(tag, "count"), "manualBreakCount")),
    within(appending(text, there, mark)),
  ];
}

export function printed(text: string, frame: Node, print: PrintSetup | undefined): Placed[] {
  const isFitted = pagesWide(print?.fitToWidth) !== undefined;
  const breaks = pageBreak(text, frame, print?.secondPage);
  if (!print || (print.landscape === undefined && !isFitted)) return breaks;
  const setup = childOf(frame, "pageSetup");
  const own = `<${prefixed(frame.prefix, "pageSetup")} paperSize="${paper}"/>`;
  const page = setup
    ? retagged(text, setup, (tag) => withSetup(tag, print))
    : intoSheet(frame, "pageSetup", withSetup(own, print));
  return isFitted ? [fitted(text, frame), page, ...breaks] : [page, ...breaks];
}

const counted = (from: number, many: number): string =>
  `$${String(from + 1)}:$${String(from + many)}`;
const lettered = (from: number, many: number): string =>
  `$${columnLetters(from)}:$${columnLetters(from + many - 1)}`;

/** 'Log book'!$A:$B,'Log book'!$3:$4: columns first. */
function titlesText(sheet: string, { repeatColumns, repeatRows }: PrintSetup): string {
  const lines = [
    ...(repeatColumns ? [lettered(repeatColumns.column, repeatColumns.columns)] : []),
    ...(repeatRows ? [counted(repeatRows.row, repeatRows.rows)] : []),
  ];
  return lines.map((each) => quotedSheet(sheet) + each).join(",");
}

/** ECMA-376 part 1, 18.2.5: names that programs keep for themselves. */
function namesOf(sheet: string, print: PrintSetup): (readonly [string, string])[] {
  const titles = titlesText(sheet, print);
  return [
    ...(print.area ? [["_xlnm.Print_Area", absoluteArea(sheet, print.area)] as const] : []),
    ...(titles === "" ? [] : [["_xlnm.Print_Titles", titles] as const]),
  ];
}

/** What is printed, and what stands again on each page: names known on one sheet alone. */
export function addPrintNames(file: Package, sheets: readonly SheetDraft[]): void {
  const named = sheets.map((sheet) => ({ sheet, names: namesOf(sheet.name, sheet.print ?? {}) }));
  if (named.every(({ names }) => names.length === 0)) return;
  const { part, text, root, sheets: listed } = readWorkbookPart(file);
  const list = childOf(root, "definedNames");
  const tag = prefixed(root.prefix, "definedName");
  const replaced: Replacement[] = [];
  let added = "";
  for (const { sheet, names } of named) {
    const place = String(listed.findIndex(({ part: own }) => own === sheet.listed.part));
    for (const [name, refersTo] of names) {
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
