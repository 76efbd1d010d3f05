/** A sheet added behind the last one. */
import { splice } from "../../sheet/formula/splice";
import { addContentType } from "../package/content-types";
import { contentTypes, namespaces, relationshipTypes } from "../package/names";
import type { Package } from "../package/package";
import { addRelationship } from "../package/relationships";
import { refuse } from "../problem";
import type { ListedSheet, WorkbookPart } from "../read/workbook-part";
import { escapeAttribute } from "../xml/escape";
import { appending } from "../xml/insert";
import { prefixed } from "../xml/tag";
import { childOf, type Node, readTree } from "../xml/tree";
import { relationshipId } from "./table/part-list";

/** What an empty sheet's part holds. */
export const emptySheet = `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>
<worksheet xmlns="${namespaces.main}"><dimension ref="A1"/><sheetViews><sheetView workbookViewId="0"/></sheetViews><sheetFormatPr defaultRowHeight="15"/><sheetData/><pageMargins left="0.7" right="0.7" top="0.75" bottom="0.75" header="0.3" footer="0.3"/></worksheet>`;

const longest = 31;

export function refuseSheetName(name: string, taken: ReadonlySet<string>): void {
  const isBad =
    name.trim() === "" ||
    name.length > longest ||
    /[[\]:*?/\\]|\p{Control}|\p{Surrogate}|^'|'$/u.test(name) ||
    /^history$/i.test(name);
  if (isBad) refuse({ code: "bad-name", kind: "sheet", name });
  if (taken.has(name.toLowerCase())) refuse({ code: "name-taken", name });
}

export function addSheet(
  file: Package,
  workbook: WorkbookPart,
  name: string,
  id: number,
): ListedSheet {
  const folder = workbook.part.slice(0, workbook.part.lastIndexOf("/") + 1);
  const part = file.free((number) => `${folder}worksheets/sheet${String(number)}.xml`);
  file.set(part, emptySheet);
  addContentType(file, part, contentTypes.worksheet);
  const relationship = addRelationship(file, workbook.part, relationshipTypes.worksheet, part);
  const text = file.need(workbook.part);
  const list = childOf(readTree(workbook.part, text), "sheets") as Node;
  const tag = prefixed(list.prefix, "sheet");
  const added = `<${tag} name="${escapeAttribute(name)}" sheetId="${String(id)}"${relationshipId(relationship)}/>`;
  file.set(workbook.part, splice(text, [appending(text, list, added)]));
  return { name, state: "visible", kind: "cells", part, id };
}
