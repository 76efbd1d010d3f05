/** What stands against putting lines in or taking them out, found before anything is done. */
import { areaName } from "../../../sheet/cell-name";
import { named, readArea } from "../../cell-address";
import type { Sheet, Workbook } from "../../model";
import type { Package } from "../../package/package";
import { relationshipsOf } from "../../package/relationships";
import { refuse } from "../../problem";
import { attribute } from "../../xml/scan";
import { childOf, descendants, type Node, readTree } from "../../xml/tree";
import type { Lines } from "./lines";
import { knownExtensions, knownInSheet } from "./places";
import type { ShiftTrouble } from "./trouble";

/** What a sheet may lead to, by the last step of the relationship's type; each is moved, or names no cell. */
const knownOfSheet =
  /^(?:table|comments|threadedComment|vmlDrawing|drawing|pivotTable|hyperlink|printerSettings|image|control|ctrlProp|oleObject|package|slicer|timeline|customProperty)$/;

const lastStep = (type: string): string => type.slice(type.lastIndexOf("/") + 1);

export function refuseShift(sheet: string, place: string, trouble: ShiftTrouble): never {
  return refuse({ code: "cannot-shift", sheet, place, trouble });
}

function refuseTables({ name: sheet, tables }: Sheet, lines: Lines): void {
  const { at, after, isInserting, axis } = lines;
  for (const { name, area, hasHeadings, hasTotals, isFed } of tables) {
    if (axis === "column") {
      const last = area.column + area.columns - 1;
      const isInside = isInserting
        ? area.column < at && at <= last
        : area.column < after && at <= last;
      if (isInside) refuseShift(sheet, name, "table-columns");
      continue;
    }
    const last = area.row + area.rows - 1;
    const isTouched = isInserting ? area.row < at && at <= last : area.row < after && at <= last;
    if (isFed && isTouched) refuseShift(sheet, name, "from-outside");
    if (isInserting || !isTouched) continue;
    if (hasHeadings && at <= area.row) refuseShift(sheet, name, "cuts-heading");
    if (hasTotals && after > last) refuseShift(sheet, name, "cuts-totals");
    const [first, end] = [area.row + (hasHeadings ? 1 : 0), last - (hasTotals ? 1 : 0)];
    if (at <= first && after > end) refuseShift(sheet, name, "empties-table");
  }
}

/** What was one piece must stay whole on the sheet. */
function refusePushedOut({ name, tables, merged, cells }: Sheet, lines: Lines): void {
  if (!lines.isInserting) return;
  const first = lines.all - lines.count;
  const areas = [...tables.map(({ area }) => area), ...merged];
  const out = areas.find(
    (area) =>
      (lines.axis === "row" ? area.row + area.rows : area.column + area.columns) > first &&
      (lines.axis === "row" ? area.row + area.rows : area.column + area.columns) < lines.all,
  );
  if (out) refuseShift(name, areaName(out), "pushed-out");
  const cell = cells.find(
    (each) => each[lines.axis] >= first && (each.value !== undefined || each.formula !== undefined),
  );
  if (cell) refuseShift(name, named(name, cell.row, cell.column), "pushed-out");
}

function refuseFilter(sheet: string, frame: Node, lines: Lines): void {
  const ref = attribute(childOf(frame, "autoFilter") ?? { attributes: {} }, "ref");
  const area = ref === undefined ? undefined : readArea(ref);
  if (!area || ref === undefined || lines.isInserting || lines.axis === "column") return;
  const isAllGone = lines.area(area) === undefined;
  const isHeadingGone = lines.line(area.row) === undefined;
  if (isHeadingGone && !isAllGone) refuseShift(sheet, ref, "cuts-filter");
}

/** @param lines undefined for a sheet whose lines stay */
export function refuseUnknown(sheet: string, frame: Node, lines: Lines | undefined): void {
  const other = frame.children.find(({ local }) => !knownInSheet.has(local));
  if (other) refuseShift(sheet, other.local, "unknown-part");
  const consolidated = descendants(frame, "dataRef")[0];
  if (consolidated) refuseShift(sheet, "dataConsolidate", "unknown-part");
  for (const list of frame.children.filter(({ local }) => local === "extLst")) {
    const inside = list.children.flatMap(({ children }) => children);
    const unknown = inside.find(({ local }) => !knownExtensions.has(local));
    if (unknown) refuseShift(sheet, unknown.local, "unknown-part");
  }
  if (lines) refuseFilter(sheet, frame, lines);
}

function refuseParts(file: Package, sheet: Sheet): void {
  for (const { type } of relationshipsOf(file, sheet.part)) {
    const step = lastStep(type);
    if (step === "queryTable") refuseShift(sheet.name, sheet.name, "from-outside");
    if (!knownOfSheet.test(step)) refuseShift(sheet.name, step, "unknown-part");
  }
  for (const part of file.names) {
    if (/^xl\/revisions\//i.test(part)) refuseShift(sheet.name, part, "revisions");
    if (/^xl\/(?:volatileDependencies|sortMap)[^/]*\.xml$/i.test(part)) {
      refuseShift(sheet.name, part, "unknown-part");
    }
    const isConnections = /^xl\/connections\.xml$/i.test(part);
    const isExtension = /(?:^|\/)webextensions\/webextension\d*\.xml$/i.test(part);
    if (!isConnections && !isExtension) continue;
    const root = readTree(part, file.need(part));
    const cell = descendants(root, "parameter").find(
      (node) => attribute(node, "cell") !== undefined,
    );
    if (cell) refuseShift(sheet.name, attribute(cell, "cell") ?? "", "connection-parameters");
    if (descendants(root, "binding").length > 0) refuseShift(sheet.name, part, "bindings");
  }
}

export function refuseUnfit({ file }: Workbook, sheet: Sheet, lines: Lines): void {
  if (sheet.isProtected) refuseShift(sheet.name, sheet.name, "protected");
  refuseTables(sheet, lines);
  refusePushedOut(sheet, lines);
  refuseParts(file, sheet);
}
