/** A sheet is taken out of the file, with the parts that are its own; what referred to it is lost. */
import type { Workbook } from "../../model";
import { removeContentType } from "../../package/content-types";
import { relationshipTypes } from "../../package/names";
import type { Package } from "../../package/package";
import {
  relationshipPart,
  relationshipsOf,
  removeRelationships,
  targetOf,
} from "../../package/relationships";
import { refuse } from "../../problem";
import { readWorkbookPart } from "../../read/workbook-part";
import { childOf } from "../../xml/tree";
import { isSameSheet, lostIn } from "./in-formula";
import { relist } from "./list";
import { mentionsOf } from "./mentions";
import { rewriteParts } from "./rewrite-parts";
import { retitle } from "./titles";

/** What a sheet may lead to that goes with it, by the last step of the relationship's type. */
const goesAlong = new Set(
  "drawing vmlDrawing legacyDrawing comments threadedComment table printerSettings hyperlink image".split(
    " ",
  ),
);

const lastStep = (type: string): string => type.slice(type.lastIndexOf("/") + 1);

/** All that the file leads to. */
function led(file: Package): Set<string> {
  const found = new Set<string>();
  const waiting = [""];
  for (let part = waiting.pop(); part !== undefined; part = waiting.pop()) {
    for (const { target, isOutside } of relationshipsOf(file, part)) {
      if (isOutside || found.has(target.toLowerCase())) continue;
      found.add(target.toLowerCase());
      waiting.push(target);
    }
  }
  return found;
}

function removeUnled(file: Package, before: ReadonlySet<string>): void {
  const after = led(file);
  for (const part of file.names) {
    const name = part.toLowerCase();
    if (!before.has(name) || after.has(name)) continue;
    file.remove(part);
    removeContentType(file, part);
    const relationships = relationshipPart(part);
    if (file.has(relationships)) file.remove(relationships);
  }
}

function refuseUnfit(file: Package, opened: Workbook, place: number): void {
  const sheet = opened.sheets[place];
  if (!sheet) return;
  const isShown = (each: { state: string }) => each.state === "visible";
  const others = opened.sheets.filter((each) => each !== sheet);
  if (!others.some((each) => isShown(each) && each.kind === "cells")) {
    refuse({ code: "last-sheet", sheet: sheet.name });
  }
  const { root } = readWorkbookPart(file);
  if (childOf(root, "customWorkbookViews")) {
    refuse({ code: "not-taken-along", sheet: sheet.name, what: "views of its own" });
  }
  const other = relationshipsOf(file, sheet.part).find(
    ({ type }) => !goesAlong.has(lastStep(type)),
  );
  if (other) {
    refuse({ code: "not-taken-along", sheet: sheet.name, what: `a ${lastStep(other.type)}` });
  }
}

/** The place, among those that are left, of the sheet that is shown in its stead. */
function nextShown(opened: Workbook, order: readonly number[], gone: number): number {
  const isShown = (old: number) => opened.sheets[old]?.state === "visible";
  const shown = order.filter(isShown);
  const next = shown.find((old) => old > gone) ?? shown.at(-1) ?? 0;
  return Math.max(0, order.indexOf(next));
}

export function deleteSheet(file: Package, opened: Workbook, name: string): void {
  const place = opened.sheets.findIndex((each) => isSameSheet(each.name, name));
  const sheet = opened.sheets[place] ?? refuse({ code: "no-sheet", name });
  refuseUnfit(file, opened, place);
  const before = led(file);
  const workbookPart = readWorkbookPart(file).part;
  const order = opened.sheets.map((_, each) => each).filter((each) => each !== place);
  relist(file, order, nextShown(opened, order, place));
  removeRelationships(file, workbookPart, sheet.part);
  // the order of calculation names sheets by numbers; without it, programs find one
  const chain = targetOf(file, workbookPart, relationshipTypes.calculationChain);
  if (chain !== undefined) removeRelationships(file, workbookPart, chain);
  removeUnled(file, before);
  const tables = new Set(sheet.tables.map((table) => table.name.toLowerCase()));
  const mentions = mentionsOf(sheet.name, tables);
  const going = { sheet: sheet.name, order: opened.sheets.map((each) => each.name), tables };
  rewriteParts(file, {
    formula: (text) => (mentions.inFormula(text) ? lostIn(text, going) : text),
    // it then leads nowhere, as in every spreadsheet; and so does what a pivot table is made of
    location: (text) => text,
    sheet: (text) => text,
    concerns: (text) => mentions.inPart(text),
    refers: (text) => mentions.asReference(text),
  });
  retitle(file);
}
