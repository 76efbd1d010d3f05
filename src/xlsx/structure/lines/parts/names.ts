/** Defined names, print areas and titles among them. */
import { splice } from "../../../../sheet/formula/splice";
import type { Package } from "../../../package/package";
import { refuse } from "../../../problem";
import { readWorkbookPart } from "../../../read/workbook-part";
import { attribute } from "../../../xml/scan";
import { childOf, childrenOf } from "../../../xml/tree";
import { textOf } from "../in-place";
import type { Lines } from "../lines";
import { byFixedLines, movedFormula } from "../moved-formula";

export function moveNames(file: Package, lines: Lines, mayRefer: (text: string) => boolean): void {
  const { part, text, root } = readWorkbookPart(file);
  const list = childOf(root, "definedNames");
  const changes = childrenOf(list, "definedName").flatMap((node) => {
    if (!mayRefer(node.text)) return [];
    const now = movedFormula(node.text, undefined, lines, byFixedLines(lines));
    if (now === undefined) {
      const place = attribute(node, "name") ?? "";
      refuse({ code: "cannot-shift", sheet: lines.sheet, place, trouble: "unreadable-formula" });
    }
    return now === undefined || now === node.text ? [] : [textOf(node, now)];
  });
  if (changes.length > 0) file.set(part, splice(text, changes));
}
