/** The part of a sheet, rewritten: its rows and cells, the formulas in them, and all that stands around them. */
import { type Replacement, splice } from "../../../sheet/formula/splice";
import { readArea } from "../../cell-address";
import type { Sheet, Workbook } from "../../model";
import type { Package } from "../../package/package";
import { refuse } from "../../problem";
import { callsAreArrays } from "../../patch/call-form";
import { orderedText } from "../../read/rising-order";
import { scanSheet } from "../../read/sheet-scan";
import { appending, inserting } from "../../xml/insert";
import { attribute } from "../../xml/scan";
import { childOf, type Node } from "../../xml/tree";
import { type FormulaCell, FormulaCells } from "./formula-cells";
import { FrameLines } from "./frame-lines";
import type { Lines } from "./lines";
import { newCells, type NewIn, newRows } from "./new-lines";
import { refuseShift, refuseUnknown } from "./refused";
import { RowsOf } from "./rows-of";
import { named } from "../../cell-address";

/** A sheet whose lines stay: what in it refers to the sheet that moves. */
export function followSheet(file: Package, { name, part }: Sheet, lines: Lines): void {
  const text = file.need(part);
  const formulas: FormulaCell[] = [];
  const { frame, isOrdered } = scanSheet(part, text, {
    cell(cell) {
      if (cell.formula) formulas.push(cell as FormulaCell);
    },
  });
  if (!isOrdered) refuse({ code: "rows-out-of-order", sheet: name });
  refuseUnknown(name, frame, undefined);
  const changes = [
    ...new FrameLines(text, name, lines).changes(frame),
    ...new FormulaCells(text, name, lines).changes(formulas),
  ];
  if (changes.length > 0) file.set(part, splice(text, changes));
}

/** Rows of headings, besides those of tables: what new rows do not look like. */
function headings(frame: Node, { frozenRows }: Sheet): Set<number> {
  const filter = childOf(frame, "autoFilter");
  const area = filter && readArea(attribute(filter, "ref") ?? "");
  return new Set([...(frozenRows > 0 ? [frozenRows - 1] : []), ...(area ? [area.row] : [])]);
}

function newLines(text: string, frame: Node, rows: RowsOf, within: NewIn): Replacement[] {
  const { lines } = within;
  if (!lines.isInserting) return [];
  if (lines.axis === "column") {
    return [...newCells(within, rows)].flatMap(([row, xml]) => {
      const at = rows.newCellsAt.get(row);
      return at === undefined ? [] : [inserting(at, xml)];
    });
  }
  const xml = newRows(within, rows);
  const data = childOf(frame, "sheetData");
  if (xml === "" || !data) return [];
  return [
    rows.newRowsAt === undefined ? appending(text, data, xml) : inserting(rows.newRowsAt, xml),
  ];
}

/** Asked for many cells, found once. */
function once(find: () => boolean): () => boolean {
  let found: boolean | undefined;
  return () => (found ??= find());
}

/** The sheet whose lines move. */
export function shiftSheet(
  file: Package,
  opened: Workbook,
  sheet: Sheet,
  lines: Lines,
  dynamicMark: number | undefined,
): void {
  const { part, name } = sheet;
  const text = orderedText(file, part);
  const rows = new RowsOf(text, lines);
  const { frame, isOrdered } = scanSheet(part, text, rows);
  if (!isOrdered) refuse({ code: "rows-out-of-order", sheet: name });
  refuseUnknown(name, frame, lines);
  const out = rows.pushedOut;
  if (out) refuseShift(name, named(name, out.row, out.column), "pushed-out");
  const within: NewIn = {
    callsAreArrays: once(() => callsAreArrays(opened)),
    sheet,
    lines,
    dynamicMark,
    prefix: frame.prefix,
    headings: headings(frame, sheet),
  };
  const changes = [
    // first: what goes in before something that changes stands before it
    ...newLines(text, frame, rows, within),
    ...rows.changes,
    ...new FrameLines(text, name, lines).changes(frame),
    ...new FormulaCells(text, name, lines).changes(rows.formulas),
  ];
  file.set(part, splice(text, changes));
}
