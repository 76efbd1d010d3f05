/** A sheet: its cells, and from the rest of its part what a grid can show. */
import { readArea } from "../cell-address";
import { limits } from "../limits";
import type { Area } from "../../sheet/area";
import type { ColumnWidth, Kept, RowHeight, Sheet } from "../model";
import type { Package } from "../package/package";
import { refuse } from "../problem";
import { attribute, count, flag } from "../xml/scan";
import { childOf, childrenOf, type Node } from "../xml/tree";
import { apart } from "./apart";
import { readAttached } from "./attached";
import { sheetFilter } from "./filters";
import { readValidations } from "./validations";
import { type CellContext, CellReader } from "./cells";
import { keptOnSheet } from "./kept";
import { keepInOrder, risingOrder } from "./rising-order";
import { readNotes } from "./notes";
import { type Budget, type RawRow, scanSheet } from "./sheet-scan";
import { readTables } from "./tables";
import type { ListedSheet } from "./workbook-part";

/** Each column once: in a sound file none stands in two of the spans. */
function widths(frame: Node): ColumnWidth[] {
  let room = limits.columns;
  return childrenOf(childOf(frame, "cols"), "col").flatMap((node) => {
    const width = Number(attribute(node, "width"));
    const first = count(node, "min", 1) - 1;
    const last = Math.min(count(node, "max", 1), limits.columns) - 1;
    room -= Math.max(0, last - first + 1);
    if (room < 0 || last < first || first < 0) return [];
    const isHidden = flag(node, "hidden");
    const look = count(node, "style");
    return {
      first,
      last,
      isHidden,
      look,
      ...(width > 0 ? { width: Math.min(width, limits.width) } : {}),
    };
  });
}

function frozen(frame: Node): Pick<Sheet, "frozenRows" | "frozenColumns"> {
  const pane = childOf(childOf(childOf(frame, "sheetViews"), "sheetView"), "pane");
  const isFrozen = pane && /^frozen/.test(attribute(pane, "state") ?? "");
  const lines = (name: string, most: number): number => {
    const given = Math.floor(Number((pane && attribute(pane, name)) ?? 0)) || 0;
    return given > 0 && given < most ? given : 0;
  };
  return isFrozen
    ? { frozenRows: lines("ySplit", limits.rows), frozenColumns: lines("xSplit", limits.columns) }
    : { frozenRows: 0, frozenColumns: 0 };
}

function paper(frame: Node): Pick<Sheet, "isLandscape"> {
  const setup = childOf(frame, "pageSetup");
  const said = setup && attribute(setup, "orientation");
  return said === "landscape" || said === "portrait" ? { isLandscape: said === "landscape" } : {};
}

const merged = (frame: Node): Area[] =>
  apart(
    childrenOf(childOf(frame, "mergeCells"), "mergeCell").flatMap(
      (node) => readArea(attribute(node, "ref") ?? "") ?? [],
    ),
  );

const nothing = {
  cells: [],
  widths: [],
  hiddenRows: [],
  heights: [],
  merged: [],
  tables: [],
  notes: [],
  attached: [],
  validations: [],
  frozenRows: 0,
  frozenColumns: 0,
  isProtected: false,
};

class RowReader extends CellReader {
  readonly hiddenRows: number[] = [];
  readonly heights: RowHeight[] = [];
  row({ tag, row }: RawRow): void {
    const written = attribute(tag, "ht");
    if (flag(tag, "hidden") || written === "0") this.hiddenRows.push(row);
    const height = Math.min(Number(written), limits.height);
    if (height > 0) this.heights.push({ row, height, isSet: flag(tag, "customHeight") });
  }
}

function readRows(
  part: string,
  text: string,
  context: Omit<CellContext, "part" | "budget">,
  budget: Budget,
): { readonly reader: RowReader; readonly frame: Node; readonly isOrdered: boolean } {
  const before = { ...budget };
  const reader = new RowReader({ ...context, part, budget });
  const { frame, isOrdered } = scanSheet(part, text, reader, budget);
  const ordered = isOrdered ? undefined : risingOrder(part, text);
  if (ordered === undefined) return { reader, frame, isOrdered };
  Object.assign(budget, before);
  return { ...readRows(part, ordered, context, budget), isOrdered };
}

/** ... read before, where the part stands as it did and its texts are the same. */
function rowsOf(
  file: Package,
  part: string,
  context: Omit<CellContext, "part" | "budget">,
  budget: Budget,
) {
  const read = (text: string) => {
    const left = { ...budget };
    const rows = readRows(part, text, context, left);
    const [cells, sharedText] = [budget.cells - left.cells, budget.sharedText - left.sharedText];
    return { ...rows, context, cells, sharedText };
  };
  const known = file.needParsed(part, "rows", read);
  const isSame = (["strings", "dynamicMarks", "dates"] as const).every(
    (each) => known.context[each] === context[each],
  );
  const rows = isSame ? known : read(file.need(part));
  if (rows.isOrdered) keepInOrder(file, part);
  budget.cells -= rows.cells;
  budget.sharedText -= rows.sharedText;
  if (budget.cells < 0) refuse({ code: "too-many-cells" });
  if (budget.sharedText < 0) refuse({ code: "too-large" });
  return rows;
}

export function readSheet(
  file: Package,
  { name, state, kind, part }: ListedSheet,
  context: Omit<CellContext, "part" | "budget">,
  budget: Budget,
): { readonly sheet: Sheet; readonly kept: readonly Kept[] } {
  const listed = { name, state, kind, part };
  if (kind === "other") {
    const kept = keptOnSheet(file, name, part, undefined, {});
    return { sheet: { ...listed, ...nothing }, kept };
  }
  const { reader, frame } = rowsOf(file, part, context, budget);
  const notes = readNotes(file, part);
  const filter = sheetFilter(frame);
  const sheet: Sheet = {
    ...listed,
    cells: reader.cells,
    hiddenRows: reader.hiddenRows,
    heights: reader.heights,
    widths: widths(frame),
    merged: merged(frame),
    tables: readTables(file, part),
    notes,
    attached: readAttached(file, part, frame, notes),
    validations: readValidations(frame),
    ...(filter ? { filter } : {}),
    isProtected: childrenOf(frame, "sheetProtection").some((node) => flag(node, "sheet")),
    ...frozen(frame),
    ...paper(frame),
  };
  const more = { notes: notes.length, "rich text": reader.richTexts };
  return { sheet, kept: keptOnSheet(file, name, part, frame, more) };
}
