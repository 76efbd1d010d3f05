/** A sheet is given another name: in the list of sheets and in all that refers to it. */
import { splice } from "../../../sheet/formula/splice";
import type { Workbook } from "../../model";
import type { Package } from "../../package/package";
import { refuseSheetName } from "../../patch/new-sheet";
import { readWorkbookPart } from "../../read/workbook-part";
import { withAttribute } from "../../xml/tag";
import { isSameSheet, renamedIn } from "./in-formula";
import { listedNode } from "./list";
import { mentionsOf } from "./mentions";
import { rewriteParts } from "./rewrite-parts";
import { retitle } from "./titles";

/** @param from as the file has it */
export function renameSheet(file: Package, opened: Workbook, from: string, to: string): void {
  const others = opened.sheets.filter(({ name }) => name !== from);
  refuseSheetName(to, new Set(others.map(({ name }) => name.toLowerCase())));
  const workbook = readWorkbookPart(file);
  const { start, openEnd } = listedNode(workbook, from);
  const tag = withAttribute(workbook.text.slice(start, openEnd), "name", to);
  file.set(workbook.part, splice(workbook.text, [{ start, end: openEnd, text: tag }]));
  const mentions = mentionsOf(from);
  const formula = (text: string) => (mentions.inFormula(text) ? renamedIn(text, from, to) : text);
  rewriteParts(file, {
    formula,
    location: formula,
    sheet: (name) => (isSameSheet(name, from) ? to : name),
    concerns: (text) => mentions.inPart(text),
    refers: (text) => mentions.asReference(text),
  });
  retitle(file);
}
