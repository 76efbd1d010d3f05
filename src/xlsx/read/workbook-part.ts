/** The part that lists the sheets and the names. */
import { formulaFromFile } from "../formulas/from-file";
import type { DefinedName, Sheet } from "../model";
import { namespaces, relationshipTypes, strictMarks } from "../package/names";
import type { Package } from "../package/package";
import { contentTypeOf } from "../package/content-types";
import { refuseOtherContent } from "../package/refused-kinds";
import { relationshipsOf } from "../package/relationships";
import { refuse } from "../problem";
import { attribute, attributeOf, count, flag } from "../xml/scan";
import { childOf, childrenOf, type Node, readTree } from "../xml/tree";

export interface ListedSheet extends Pick<Sheet, "name" | "state" | "kind" | "part"> {
  readonly id: number;
}

export interface WorkbookPart {
  readonly part: string;
  readonly text: string;
  readonly root: Node;
  readonly sheets: readonly ListedSheet[];
}

const states: ReadonlyMap<string | undefined, Sheet["state"]> = new Map([
  ["hidden", "hidden"],
  ["veryHidden", "very hidden"],
]);

function findPart(file: Package): string {
  const found = relationshipsOf(file, "");
  if (found.some(({ type }) => strictMarks.includes(type))) refuse({ code: "strict-format" });
  const part = found.find(({ type }) => type === relationshipTypes.workbook)?.target;
  const ownType = file.has("mimetype") ? (file.text("mimetype") ?? "") : "";
  refuseOtherContent(part === undefined ? "" : contentTypeOf(file, part), ownType);
  return part ?? refuse({ code: "not-a-workbook" });
}

function listed(file: Package, part: string, root: Node): ListedSheet[] {
  const targets = new Map(relationshipsOf(file, part).map((each) => [each.id, each]));
  return childrenOf(childOf(root, "sheets"), "sheet").map((node) => {
    const target = targets.get(attributeOf(node, namespaces.relationships, "id") ?? "");
    const state = attribute(node, "state");
    if (!target) return refuse({ code: "damaged", part, detail: "a sheet leads nowhere" });
    return {
      name: attribute(node, "name") ?? "",
      state: states.get(state) ?? "visible",
      kind: target.type === relationshipTypes.worksheet ? "cells" : "other",
      part: target.target,
      id: count(node, "sheetId"),
    };
  });
}

const isRepeated = (names: readonly string[]): boolean =>
  new Set(names.map((name) => name.toLowerCase())).size < names.length;

export function readWorkbookPart(file: Package): WorkbookPart {
  const part = findPart(file);
  const { text, root } = file.needParsed(part, "tree and text", (read) => ({
    text: read,
    root: readTree(part, read),
  }));
  if (strictMarks.includes(root.uri)) refuse({ code: "strict-format" });
  if (root.uri !== namespaces.main || root.local !== "workbook") {
    refuse({ code: "not-a-workbook" });
  }
  const sheets = listed(file, part, root);
  if (sheets.length === 0) refuse({ code: "damaged", part, detail: "it lists no sheet" });
  if (isRepeated(sheets.map((sheet) => sheet.part))) {
    refuse({ code: "damaged", part, detail: "two of its sheets are one" });
  }
  // Formulas, and edits, go by these names.
  if (sheets.some(({ name }) => name === "") || isRepeated(sheets.map(({ name }) => name))) {
    refuse({ code: "damaged", part, detail: "its sheets are not told apart by their names" });
  }
  return { part, text, root, sheets };
}

export const dateSystem = (root: Node): 1900 | 1904 => {
  const properties = childOf(root, "workbookPr");
  return properties && flag(properties, "date1904") ? 1904 : 1900;
};

export const isStructureLocked = (root: Node): boolean => {
  const protection = childOf(root, "workbookProtection");
  return protection !== undefined && flag(protection, "lockStructure");
};

/** Libraries that cannot work formulas out write 0 for each, and ask for it. */
export const isUnsettled = (root: Node): boolean => {
  const calculation = childOf(root, "calcPr");
  return calculation !== undefined && flag(calculation, "fullCalcOnLoad");
};

export function readNames({ root, sheets }: WorkbookPart): DefinedName[] {
  return childrenOf(childOf(root, "definedNames"), "definedName").map((node) => {
    const sheet = sheets[count(node, "localSheetId", -1)]?.name;
    return {
      name: attribute(node, "name") ?? "",
      refersTo: formulaFromFile(node.text),
      isHidden: flag(node, "hidden"),
      ...(sheet === undefined ? {} : { sheet }),
    };
  });
}
