/** One sheet's part rewritten: its cells in a single pass, and what stands around them. */
import { splice } from "../../sheet/formula/splice";
import { addCharts } from "../chart/add-chart";
import type { ColumnWidth } from "../model";
import type { Package } from "../package/package";
import { refuse } from "../problem";
import { orderedText } from "../read/rising-order";
import { scanSheet } from "../read/sheet-scan";
import { appending } from "../xml/insert";
import { childOf, type Node } from "../xml/tree";
import { movedBeside } from "./beside";
import { offered } from "./choices";
import { changedWidths } from "./columns";
import { refuseCovered } from "./covered";
import { grownDimension } from "./dimension";
import type { Dress } from "./edits";
import { inOrder } from "./frame";
import { frozen } from "./freeze";
import { addNotes } from "./notes";
import { printed } from "./print-setup";
import { SheetCells } from "./sheet-cells";
import type { SheetDraft } from "./sheet-draft";
import { filteredSheet, hiddenBy } from "./table/filter";
import { makeTablePart } from "./table/part";
import { listedTables } from "./table/part-list";
import { grownRules, isGrown } from "./table/rules";

/** What the styles part does for cells. */
export interface Dresser {
  dressed(style: number, dress: Dress): number;
  formatOf(style: number): string;
}

/** The style of a column's empty cells. Files list columns from the left. */
function columnStyles(widths: readonly ColumnWidth[]): (column: number) => number {
  return (column) => {
    let low = 0;
    let high = widths.length - 1;
    while (low <= high) {
      const middle = (low + high) >> 1;
      const each = widths[middle] as ColumnWidth;
      if (column < each.first) high = middle - 1;
      else if (column > each.last) low = middle + 1;
      else return each.look;
    }
    return 0;
  };
}

const needsNothing = (sheet: SheetDraft): boolean =>
  sheet.wanted.isEmpty &&
  sheet.widths.size === 0 &&
  sheet.heights.size === 0 &&
  sheet.choices.length === 0 &&
  sheet.notes.length === 0 &&
  sheet.moves.length === 0 &&
  sheet.filters.length === 0 &&
  sheet.charts.length === 0 &&
  sheet.freeze === undefined &&
  sheet.print === undefined &&
  sheet.tables.every((table) => table.before !== undefined && !isGrown(table));

/** Returns the cells whose formulas the order of calculation must forget. */
export function applySheet(
  file: Package,
  sheet: SheetDraft,
  dresser: Dresser,
  dynamicMark: number | undefined,
): readonly string[] {
  if (needsNothing(sheet)) return [];
  const { part } = sheet.listed;
  // without an order of its own it is refused below
  const text = orderedText(file, part);
  const cells = new SheetCells({
    sheet: sheet.name,
    text,
    wanted: sheet.wanted,
    heights: sheet.heights,
    hidden: hiddenBy(sheet.filters),
    dynamicMark,
    columnStyle: columnStyles(sheet.now?.widths ?? []),
    dressed: (style, dress) => dresser.dressed(style, dress),
    formatOf: (style) => dresser.formatOf(style),
  });
  const { frame, isOrdered } = scanSheet(part, text, cells);
  if (!isOrdered) refuse({ code: "rows-out-of-order", sheet: sheet.name });
  refuseCovered(sheet.name, frame, sheet.wanted);
  const data = childOf(frame, "sheetData");
  if (!data) return refuse({ code: "damaged", part, detail: "it has no place for rows" });
  const below = cells.rowsAtEnd(data.prefix);
  const around = inOrder(aroundCells(file, sheet, text, frame));
  const atEnd = below === "" ? [] : [appending(text, data, below)];
  file.set(part, splice(text, [...around, ...cells.replacements, ...atEnd]));
  return cells.droppedFormulas;
}

function aroundCells(file: Package, sheet: SheetDraft, text: string, frame: Node) {
  const added = sheet.tables.filter(({ before }) => before === undefined);
  return [
    ...grownDimension(text, frame, sheet.wanted),
    ...frozen(sheet.name, text, frame, sheet.freeze),
    ...printed(text, frame, sheet.print),
    ...changedWidths(text, frame, sheet.widths),
    ...grownRules(text, frame, sheet.tables),
    ...offered(sheet.name, text, frame, sheet.choices),
    ...addCharts(file, sheet.listed.part, frame, sheet.charts),
    // before others are added where they were
    ...movedBeside(file, sheet.listed.part, text, frame, sheet.moves),
    ...addNotes(file, sheet, frame),
    ...filteredSheet(sheet.name, text, frame, sheet.filters),
    ...listedTables(
      text,
      frame,
      added.map((table) => makeTablePart(file, table)),
    ),
  ];
}
