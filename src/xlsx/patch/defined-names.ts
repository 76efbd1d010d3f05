/** Names for cells, figures and formulas, added to the workbook's list. */
import { splice } from "../../sheet/formula/splice";
import { formulaToFile } from "../formulas/to-file";
import { isGoodName } from "../good-name";
import { refuse } from "../problem";
import type { Package } from "../package/package";
import { escapeAttribute, escapeText } from "../xml/escape";
import { appending } from "../xml/insert";
import { prefixed } from "../xml/tag";
import { childOf, readTree } from "../xml/tree";
import { intoWorkbook } from "./frame";

export interface NewName {
  readonly name: string;
  readonly refersTo: string;
}

export function addNames(file: Package, workbookPart: string, names: readonly NewName[]): void {
  if (names.length === 0) return;
  const text = file.need(workbookPart);
  const root = readTree(workbookPart, text);
  const tag = prefixed(root.prefix, "definedName");
  const added = names
    .map(({ name, refersTo }) => {
      const formula = escapeText(formulaToFile(refersTo, name));
      return `<${tag} name="${escapeAttribute(name)}">${formula}</${tag}>`;
    })
    .join("");
  const list = childOf(root, "definedNames");
  const name = prefixed(root.prefix, "definedNames");
  const change = list
    ? appending(text, list, added)
    : intoWorkbook(root, "definedNames", `<${name}>${added}</${name}>`);
  file.set(workbookPart, splice(text, [change]));
}

export function refuseName(
  name: string,
  kind: "table" | "defined",
  taken: ReadonlySet<string>,
): void {
  if (!isGoodName(name)) refuse({ code: "bad-name", kind, name });
  if (taken.has(name.toLowerCase())) refuse({ code: "name-taken", name });
}
