/** Rows or columns put in or taken out: checked first, then done part by part, then read back. */
import type { Sheet, Workbook } from "../../model";
import { relationshipTypes } from "../../package/names";
import type { Package } from "../../package/package";
import { targetOf } from "../../package/relationships";
import { dropPart } from "../../patch/calculation-chain";
import { refuse } from "../../problem";
import { readAgain } from "../../read-back";
import { dynamicMarks } from "../../read/dynamic-arrays";
import { readWorkbookPart } from "../../read/workbook-part";
import type { LinesAct } from "../act";
import { isSameSheet } from "../sheets/in-formula";
import { mentionsOf } from "../sheets/mentions";
import { rewriteParts } from "../sheets/rewrite-parts";
import { Lines } from "./lines";
import { movedFormula } from "./moved-formula";
import { ledToBy, moveOwnParts } from "./own-parts";
import { isChart, moveChart } from "./parts/charts";
import { moveNames } from "./parts/names";
import { isPivotCache, moveSource } from "./parts/pivots";
import { moveTables } from "./parts/tables";
import { refuseOtherwise } from "./proof";
import { refuseShift, refuseUnfit } from "./refused";
import { followSheet, shiftSheet } from "./sheet-part";

/** Charts, shapes, controls and pivot tables, wherever in the file they are. */
function moveElsewhere(file: Package, opened: Workbook, sheet: Sheet, lines: Lines): void {
  const mentions = mentionsOf(sheet.name);
  const own = ledToBy(file, sheet);
  const done = new Set(
    opened.sheets.flatMap(({ part, tables }) => [part, ...tables.map((each) => each.part)]),
  );
  done.add(readWorkbookPart(file).part);
  for (const part of file.names) {
    if (isChart(part)) moveChart(file, part, lines);
    if (isPivotCache(part)) moveSource(file, part, lines);
    if (isChart(part) || isPivotCache(part)) done.add(part);
  }
  const formula = (text: string, part: string): string => {
    if (text === "") return text;
    const now = movedFormula(text, own.has(part) ? sheet.name : undefined, lines);
    if (now === undefined && mentions.inFormula(text)) {
      refuseShift(sheet.name, part, "unreadable-formula");
    }
    return now ?? text;
  };
  rewriteParts(file, {
    formula,
    location: formula,
    sheet: (name) => name,
    concerns: (text, part) => !done.has(part) && (own.has(part) || mentions.inPart(text)),
    refers: (text) => mentions.asReference(text),
  });
}

function dropChain(file: Package): void {
  const { part } = readWorkbookPart(file);
  const chain = targetOf(file, part, relationshipTypes.calculationChain);
  if (chain !== undefined) dropPart(file, part, chain);
}

export function withLines(opened: Workbook, act: LinesAct): Workbook {
  const sheet =
    opened.sheets.find(({ name }) => isSameSheet(name, act.sheet)) ??
    refuse({ code: "no-sheet", name: act.sheet });
  if (sheet.kind !== "cells") refuse({ code: "no-cells", sheet: sheet.name });
  const lines = new Lines({ ...act, sheet: sheet.name });
  refuseUnfit(opened, sheet, lines);
  const file = opened.file.fresh();
  const mentions = mentionsOf(sheet.name);
  const [dynamicMark] = dynamicMarks(file, readWorkbookPart(file).part);
  for (const each of opened.sheets) {
    if (each === sheet) shiftSheet(file, opened, each, lines, dynamicMark);
    else if (each.kind === "cells" && mentions.inPart(file.need(each.part)))
      followSheet(file, each, lines);
  }
  moveTables(file, opened.sheets, lines);
  moveNames(file, lines, (text) => mentions.inFormula(text));
  moveOwnParts(file, sheet, lines);
  moveElsewhere(file, opened, sheet, lines);
  dropChain(file);
  const after = readAgain(file.toBytes(), opened.file);
  refuseOtherwise(opened, after, lines);
  return after;
}
