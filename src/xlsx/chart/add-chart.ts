/** Charts added to a sheet: a part for each, and their places in the sheet's drawing, be it new or not. */
import { splice } from "../../sheet/formula/splice";
import { addContentType } from "../package/content-types";
import { contentTypes, namespaces, relationshipTypes } from "../package/names";
import type { Package } from "../package/package";
import { addRelationship, targetOf } from "../package/relationships";
import { intoSheet, type Placed } from "../patch/frame";
import { relationshipId } from "../patch/table/part-list";
import { escapeAttribute } from "../xml/escape";
import { appending } from "../xml/insert";
import { count } from "../xml/scan";
import { prefixed } from "../xml/tag";
import { descendants, type Node, readTree } from "../xml/tree";
import type { Chart } from "./chart";
import { chartXml } from "./chart-xml";

const emptyDrawing = `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<xdr:wsDr xmlns:xdr="${namespaces.sheetDrawing}" xmlns:a="${namespaces.drawing}"></xdr:wsDr>`;

const corner = (name: "from" | "to", row: number, column: number): string =>
  `<xdr:${name}><xdr:col>${String(column)}</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>${String(row)}</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:${name}>`;

/** Where the chart lies. It says its own namespaces, whatever the drawing calls them. */
function anchorXml({ over, description }: Chart, number: number, relationship: string): string {
  const { row, column, rows, columns } = over;
  const id = String(number);
  return `<xdr:twoCellAnchor xmlns:xdr="${namespaces.sheetDrawing}" xmlns:a="${namespaces.drawing}" editAs="oneCell">${corner("from", row, column)}${corner("to", row + rows, column + columns)}<xdr:graphicFrame macro=""><xdr:nvGraphicFramePr><xdr:cNvPr id="${id}" name="Chart ${id}" descr="${escapeAttribute(description)}"/><xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr><xdr:xfrm><a:off x="0" y="0"/><a:ext cx="0" cy="0"/></xdr:xfrm><a:graphic><a:graphicData uri="${namespaces.chart}"><c:chart xmlns:c="${namespaces.chart}"${relationshipId(relationship)}/></a:graphicData></a:graphic></xdr:graphicFrame><xdr:clientData/></xdr:twoCellAnchor>`;
}

function addOne(file: Package, drawing: string, chart: Chart): void {
  const part = file.free((number) => `xl/charts/chart${String(number)}.xml`);
  file.set(part, chartXml(chart));
  addContentType(file, part, contentTypes.chart);
  const relationship = addRelationship(file, drawing, relationshipTypes.chart, part);
  const text = file.need(drawing);
  const root = readTree(drawing, text);
  const ids = descendants(root, "cNvPr").map((node) => count(node, "id"));
  const anchor = anchorXml(chart, Math.max(1, ...ids) + 1, relationship);
  file.set(drawing, splice(text, [appending(text, root, anchor)]));
}

/** What the sheet's own part needs to show its charts. */
export function addCharts(
  file: Package,
  sheetPart: string,
  frame: Node,
  charts: readonly Chart[],
): Placed[] {
  if (charts.length === 0) return [];
  const there = targetOf(file, sheetPart, relationshipTypes.drawing);
  const drawing = there ?? file.free((number) => `xl/drawings/drawing${String(number)}.xml`);
  const added: Placed[] = [];
  if (there === undefined) {
    file.set(drawing, emptyDrawing);
    addContentType(file, drawing, contentTypes.drawing);
    const relationship = addRelationship(file, sheetPart, relationshipTypes.drawing, drawing);
    const tag = prefixed(frame.prefix, "drawing");
    added.push(intoSheet(frame, "drawing", `<${tag}${relationshipId(relationship)}/>`));
  }
  for (const chart of charts) addOne(file, drawing, chart);
  return added;
}
