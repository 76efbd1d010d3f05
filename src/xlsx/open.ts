/** The door in: a file's bytes to a workbook, or the sentence that says why not. */
import type { Workbook } from "./model";
import { relationshipTypes } from "./package/names";
import { Package } from "./package/package";
import { targetOf } from "./package/relationships";
import { answer, type FileProblem } from "./problem";
import { readTheme } from "./read/colours";
import { dynamicMarks } from "./read/dynamic-arrays";
import { keptInWorkbook } from "./read/kept";
import { readLooks } from "./read/looks";
import { readSharedStrings, type SharedStrings } from "./read/shared-strings";
import { readSheet } from "./read/sheet";
import { fullBudget } from "./read/sheet-scan";
import {
  dateSystem,
  isStructureLocked,
  isUnsettled,
  readNames,
  readWorkbookPart,
} from "./read/workbook-part";
import { type Node, readTree } from "./xml/tree";

/** A part the workbook leads to, as a tree; undefined when there is none. */
function related(file: Package, workbookPart: string, type: string): Node | undefined {
  const part = targetOf(file, workbookPart, type);
  return part === undefined ? undefined : file.parsed(part, "tree", (text) => readTree(part, text));
}

const noStrings: SharedStrings = { texts: [], rich: new Set() };

function strings(file: Package, workbookPart: string): SharedStrings {
  const part = targetOf(file, workbookPart, relationshipTypes.sharedStrings);
  if (part === undefined) return noStrings;
  return file.parsed(part, "strings", (text) => readSharedStrings(part, text)) ?? noStrings;
}

/** What openXlsx does, for use behind another door: a problem travels as an exception. */
export function readWorkbook(file: Package): Workbook {
  const workbook = readWorkbookPart(file);
  const { part, root } = workbook;
  const theme = readTheme(related(file, part, relationshipTypes.theme));
  const context = {
    strings: strings(file, part),
    dynamicMarks: dynamicMarks(file, part),
    dates: dateSystem(root),
  };
  const budget = fullBudget();
  const read = workbook.sheets.map((listed) => readSheet(file, listed, context, budget));
  return {
    sheets: read.map(({ sheet }) => sheet),
    names: readNames(workbook),
    dates: context.dates,
    looks: readLooks(related(file, part, relationshipTypes.styles), theme),
    kept: [...read.flatMap(({ kept }) => kept), ...keptInWorkbook(file)],
    isProtected: isStructureLocked(root),
    isUnsettled: isUnsettled(root),
    file,
  };
}

/**
 * Opens a workbook. The bytes are only read, and must not change while the workbook is in use: what
 * is not edited is copied from them when it is saved.
 * @example openXlsx(bytes) // a Workbook, or a FileProblem for sayFile
 */
export const openXlsx = (bytes: Uint8Array): Workbook | FileProblem =>
  answer(() => readWorkbook(new Package(bytes)));
