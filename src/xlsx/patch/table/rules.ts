/**
 * Lists to choose from, other rules of what may be typed, and conditional formats go on in the rows that a
 * table has grown by, as spreadsheet programs have it: where they reached to its last row.
 */
import type { Area } from "../../../sheet/area";
import { areaName } from "../../../sheet/cell-name";
import { overlaps, readArea } from "../../cell-address";
import { escapeText } from "../../xml/escape";
import { attribute } from "../../xml/scan";
import { withAttribute } from "../../xml/tag";
import { childOf, childrenOf, descendants, type Node } from "../../xml/tree";
import { type Placed, within } from "../frame";
import type { TableDraft } from "../sheet-draft";

export const isGrown = ({ before, area }: TableDraft): boolean =>
  before !== undefined && area.rows > before.area.rows;

const bottom = ({ row, rows }: Area): number => row + rows;

/** The part of it that is new, where it stands in columns of a grown table and reached to its last row. */
function added(area: Area, tables: readonly TableDraft[]): Area | undefined {
  const table = tables.find(
    ({ before }) =>
      before &&
      bottom(before.area) === bottom(area) &&
      before.area.row < area.row &&
      before.area.column <= area.column &&
      area.column + area.columns <= before.area.column + before.area.columns,
  );
  if (!table) return undefined;
  return { ...area, row: bottom(area), rows: bottom(table.area) - bottom(area) };
}

const areasOf = (written: string): (Area | undefined)[] =>
  written.trim().split(/\s+/).map(readArea);

/** The areas as they will be; undefined where they stay. */
function grown(
  written: string,
  tables: readonly TableDraft[],
  others: readonly Area[],
): string | undefined {
  const parts = written.trim().split(/\s+/);
  const now = parts.map((part) => {
    const area = readArea(part);
    const more = area && added(area, tables);
    if (!area || !more || others.some((each) => overlaps(each, more))) return part;
    return areaName({ ...area, rows: area.rows + more.rows });
  });
  return now.some((each, at) => each !== parts[at]) ? now.join(" ") : undefined;
}

/** The older kind of rule says its areas in an attribute, the newer in an element. */
function placeOf(node: Node): { readonly written: string; readonly element?: Node } {
  const inTag = attribute(node, "sqref");
  if (inTag !== undefined) return { written: inTag };
  const element = descendants(node, "sqref")[0];
  return element ? { written: element.text, element } : { written: "" };
}

export function grownRules(text: string, frame: Node, tables: readonly TableDraft[]): Placed[] {
  const growing = tables.filter(isGrown);
  if (growing.length === 0) return [];
  const extension = childOf(frame, "extLst");
  const inside = (local: string): Node[] => (extension ? descendants(extension, local) : []);
  const typed = [
    ...childrenOf(childOf(frame, "dataValidations"), "dataValidation"),
    ...inside("dataValidation"),
  ];
  const formats = [
    ...childrenOf(frame, "conditionalFormatting"),
    ...inside("conditionalFormatting"),
  ];
  // two rules of what may be typed into one cell are too many
  const taken = typed.flatMap((node) => areasOf(placeOf(node).written)).filter((each) => !!each);
  const change = (node: Node, others: readonly Area[]): Placed[] => {
    const { written, element } = placeOf(node);
    const now = grown(written, growing, others);
    if (now === undefined) return [];
    if (element) {
      const { openEnd: start, closeStart: end } = element;
      return [within({ start, end, text: escapeText(now) })];
    }
    const { start, openEnd: end } = node;
    return [within({ start, end, text: withAttribute(text.slice(start, end), "sqref", now) })];
  };
  return [
    ...typed.flatMap((node) => change(node, taken)),
    ...formats.flatMap((node) => change(node, [])),
  ];
}
