/** Filters set and taken away: what they ask, in the sheet's part or a table's; rows are hidden elsewhere. */
import type { Area } from "../../../sheet/area";
import { areaName } from "../../../sheet/cell-name";
import { splice } from "../../../sheet/formula/splice";
import { readArea } from "../../cell-address";
import type { Criterion } from "../../filter";
import type { Package } from "../../package/package";
import { refuse } from "../../problem";
import { escapeAttribute } from "../../xml/escape";
import { inserting, unclosed } from "../../xml/insert";
import { attribute } from "../../xml/scan";
import { prefixed } from "../../xml/tag";
import { childOf, childrenOf, type Node, readTree } from "../../xml/tree";
import { intoSheet, type Placed, within } from "../frame";

export interface FilterEdit {
  /** Headings and rows. */
  readonly area: Area;
  /** The table it is of; undefined for cells of the sheet. */
  readonly table?: string;
  /** Columns counted on the sheet; none: all rows show. */
  readonly columns: readonly { readonly column: number; readonly criterion: Criterion }[];
  /** The rows of the area that do not show. */
  readonly hidden: readonly number[];
}

function criterionXml(prefix: string, criterion: Exclude<Criterion, { kind: "other" }>): string {
  const name = (local: string) => prefixed(prefix, local);
  if (criterion.kind === "words") {
    const items = criterion.words
      .filter((word) => word !== "")
      .map((word) => `<${name("filter")} val="${escapeAttribute(word)}"/>`);
    const blank = criterion.words.includes("") ? ' blank="1"' : "";
    return `<${name("filters")}${blank}>${items.join("")}</${name("filters")}>`;
  }
  const bounds = [
    ["greaterThanOrEqual", criterion.atLeast],
    ["lessThanOrEqual", criterion.atMost],
  ] as const;
  const items = bounds.flatMap(([operator, val]) =>
    val === undefined
      ? []
      : [`<${name("customFilter")} operator="${operator}" val="${String(val)}"/>`],
  );
  const both = items.length > 1 ? ' and="1"' : "";
  return `<${name("customFilters")}${both}>${items.join("")}</${name("customFilters")}>`;
}

/** The element anew: columns that ask something else than before, the rest of it as it was. */
function filterXml(text: string, own: Node | undefined, prefix: string, edit: FilterEdit): string {
  const { area, columns } = edit;
  const name = prefixed(prefix, "filterColumn");
  const wanted = new Map(columns.map(({ column, criterion }) => [column - area.column, criterion]));
  const known = childrenOf(own, "filterColumn");
  const asWritten = (id: number): string | undefined => {
    const node = known.find((each) => Number(attribute(each, "colId")) === id);
    return node && text.slice(node.start, node.end);
  };
  const made = [...wanted]
    .sort(([a], [b]) => a - b)
    .map(([id, criterion]) =>
      criterion.kind === "other"
        ? (asWritten(id) ?? "")
        : `<${name} colId="${String(id)}">${criterionXml(prefix, criterion)}</${name}>`,
    )
    .join("");
  const tag = own
    ? unclosed(text.slice(own.start, own.openEnd))
    : `<${prefixed(prefix, "autoFilter")} ref="${areaName(area)}"`;
  return made === "" ? `${tag}/>` : `${tag}>${made}</${prefixed(prefix, "autoFilter")}>`;
}

/** In a table's part it is the first thing. */
export function filterTable(file: Package, part: string, edit: FilterEdit): void {
  const text = file.need(part);
  const root = readTree(part, text);
  const own = childOf(root, "autoFilter");
  const xml = filterXml(text, own, root.prefix, edit);
  const change = own ? { start: own.start, end: own.end, text: xml } : inserting(root.openEnd, xml);
  file.set(part, splice(text, [change]));
}

/** A sheet has one filter of its own at most. */
export function filteredSheet(
  sheet: string,
  text: string,
  frame: Node,
  edits: readonly FilterEdit[],
): Placed[] {
  const edit = edits.find(({ table }) => table === undefined);
  if (!edit) return [];
  const own = childOf(frame, "autoFilter");
  const there = own && readArea(attribute(own, "ref") ?? "");
  if (there && (there.row !== edit.area.row || there.column !== edit.area.column)) {
    refuse({ code: "filter-there", sheet, area: areaName(there) });
  }
  const xml = filterXml(text, own, frame.prefix, edit);
  if (own) return [within({ start: own.start, end: own.end, text: xml })];
  return edit.columns.length === 0 ? [] : [intoSheet(frame, "autoFilter", xml)];
}

/** Of each row of the filtered areas, whether it is hidden. */
export function hiddenBy(edits: readonly FilterEdit[]): ReadonlyMap<number, boolean> {
  const rows = new Map<number, boolean>();
  for (const { area, hidden } of edits) {
    for (let row = area.row + 1; row < area.row + area.rows; row += 1) rows.set(row, false);
    for (const row of hidden) rows.set(row, true);
  }
  return rows;
}
