/** The part that holds a table: grown in place, or made. */
import { areaName } from "../../../sheet/cell-name";
import { splice } from "../../../sheet/formula/splice";
import { addContentType } from "../../package/content-types";
import { contentTypes, namespaces, relationshipTypes } from "../../package/names";
import type { Package } from "../../package/package";
import { addRelationship } from "../../package/relationships";
import { refuse } from "../../problem";
import { encodeString, escapeAttribute, escapeText } from "../../xml/escape";
import { growing } from "../../xml/insert";
import { count } from "../../xml/scan";
import { prefixed, withAttribute } from "../../xml/tag";
import { childOf, childrenOf, type Node, readTree } from "../../xml/tree";
import type { ColumnDraft, TableDraft } from "../sheet-draft";
import { refuseChangedHeadings, takeHeadings } from "./headings";

/** A heading as an attribute: line feeds are escaped as the format escapes them. */
const headingName = (heading: string): string =>
  escapeAttribute(encodeString(heading).replaceAll("\n", "_x000a_"));

function columnXml(prefix: string, id: number, { heading, formula }: ColumnDraft): string {
  const name = prefixed(prefix, "tableColumn");
  const open = `<${name} id="${String(id)}" name="${headingName(heading)}"`;
  if (formula === undefined) return `${open}/>`;
  const inner = prefixed(prefix, "calculatedColumnFormula");
  const array = formula.isArray ? ' array="1"' : "";
  return `${open}><${inner}${array}>${escapeText(formula.text)}</${inner}></${name}>`;
}

/** The area the filter buttons serve: without the row of totals. */
const filterArea = ({ area, hasTotals }: TableDraft): string =>
  areaName({ ...area, rows: area.rows - (hasTotals ? 1 : 0) });

const isGrown = ({ before, area }: TableDraft): boolean =>
  before !== undefined && areaName(before.area) !== areaName(area);

export function growTablePart(file: Package, table: TableDraft): void {
  const { before } = table;
  if (!before) return;
  refuseChangedHeadings(table, before);
  if (!isGrown(table)) return;
  takeHeadings(table);
  const text = file.need(before.part);
  const root = readTree(before.part, text);
  const retagged = (node: Node, ref: string) => ({
    start: node.start,
    end: node.openEnd,
    text: withAttribute(text.slice(node.start, node.openEnd), "ref", ref),
  });
  const list = childOf(root, "tableColumns");
  if (!list) return refuse({ code: "damaged", part: before.part, detail: "it has no columns" });
  const known = childrenOf(list, "tableColumn");
  const lastId = known.reduce((most, node) => Math.max(most, count(node, "id")), 0);
  const added = table.columns
    .slice(known.length)
    .map((column, index) => columnXml(root.prefix, lastId + 1 + index, column));
  const filter = childOf(root, "autoFilter");
  file.set(
    before.part,
    splice(text, [
      retagged(root, areaName(table.area)),
      ...(filter ? [retagged(filter, filterArea(table))] : []),
      ...(added.length > 0 ? growing(text, list, table.columns.length, added.join("")) : []),
    ]),
  );
}

/** Ids of tables differ throughout the workbook. */
function freeTableId(file: Package): number {
  const ids = file.names
    .filter((name) => /(?:^|\/)tables\/[^/]+\.xml$/i.test(name))
    .map((name) => count(readTree(name, file.need(name)), "id"));
  return Math.max(0, ...ids) + 1;
}

/** Makes the part of a table that is added, and returns its relationship with the sheet. */
export function makeTablePart(file: Package, table: TableDraft): string {
  takeHeadings(table);
  const sheetPart = table.sheet.listed.part;
  const id = String(freeTableId(file));
  const ref = areaName(table.area);
  const name = escapeAttribute(table.name);
  const columns = table.columns.map((column, index) => columnXml("", index + 1, column));
  const part = file.free((number) => `xl/tables/table${String(number)}.xml`);
  file.set(
    part,
    `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<table xmlns="${namespaces.main}" id="${id}" name="${name}" displayName="${name}" ref="${ref}" totalsRowShown="0"><autoFilter ref="${ref}"/><tableColumns count="${String(columns.length)}">${columns.join("")}</tableColumns><tableStyleInfo name="TableStyleLight1" showFirstColumn="0" showLastColumn="0" showRowStripes="1" showColumnStripes="0"/></table>`,
  );
  addContentType(file, part, contentTypes.table);
  return addRelationship(file, sheetPart, relationshipTypes.table, part);
}
