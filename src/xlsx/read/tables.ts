/** The tables of a sheet. */
import { readArea } from "../cell-address";
import { formulaFromFile } from "../formulas/from-file";
import type { Table, TableColumn } from "../model";
import { relationshipTypes } from "../package/names";
import type { Package } from "../package/package";
import { relationshipsOf } from "../package/relationships";
import { refuse } from "../problem";
import { decodeString } from "../xml/escape";
import { attribute, count } from "../xml/scan";
import { childOf, childrenOf, type Node, readTree } from "../xml/tree";
import { filterIn } from "./filters";

function column(node: Node): TableColumn {
  const formula = childOf(node, "calculatedColumnFormula")?.text;
  return {
    heading: decodeString(attribute(node, "name") ?? ""),
    ...(formula ? { formula: formulaFromFile(formula) } : {}),
  };
}

function readTable(file: Package, part: string): Table {
  const root = file.needParsed(part, "tree", (text) => readTree(part, text));
  const area = readArea(attribute(root, "ref") ?? "");
  if (!area) return refuse({ code: "damaged", part, detail: "the table has no sound area" });
  const isFed =
    relationshipsOf(file, part).some(({ type }) => type === relationshipTypes.queryTable) ||
    (attribute(root, "tableType") ?? "worksheet") !== "worksheet";
  const filter = filterIn(childOf(root, "autoFilter"), area);
  return {
    ...(filter ? { filter } : {}),
    name: attribute(root, "displayName") ?? attribute(root, "name") ?? "",
    area,
    hasHeadings: count(root, "headerRowCount", 1) > 0,
    hasTotals: count(root, "totalsRowCount") > 0,
    columns: childrenOf(childOf(root, "tableColumns"), "tableColumn").map(column),
    isFed,
    part,
  };
}

export function readTables(file: Package, sheetPart: string): Table[] {
  const parts = relationshipsOf(file, sheetPart)
    .filter(({ type, isOutside }) => type === relationshipTypes.table && !isOutside)
    .map(({ target }) => target);
  return [...new Set(parts)].map((part) => readTable(file, part));
}
