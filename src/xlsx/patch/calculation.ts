/** When a program works a workbook out anew on opening it. */
import { splice } from "../../sheet/formula/splice";
import type { Package } from "../package/package";
import { attribute } from "../xml/scan";
import { prefixed, withAttribute } from "../xml/tag";
import { childOf, readTree } from "../xml/tree";
import { intoWorkbook } from "./frame";

/** The engine of programs in use: a smaller number has all results worked out anew. */
const engine = 191029;

/**
 * @param isAnew every formula is worked out on opening; otherwise none is, and the results of the file
 * are shown
 */
export function setCalculation(file: Package, workbookPart: string, isAnew: boolean): void {
  const text = file.need(workbookPart);
  const root = readTree(workbookPart, text);
  const node = childOf(root, "calcPr");
  const name = prefixed(root.prefix, "calcPr");
  const before = node ? text.slice(node.start, node.openEnd) : `<${name}/>`;
  const isOld = !(Number(node && attribute(node, "calcId")) >= engine);
  let tag = isOld ? withAttribute(before, "calcId", String(engine)) : before;
  tag = withAttribute(tag, "fullCalcOnLoad", isAnew ? "1" : undefined);
  if (tag === before) return;
  const change = node
    ? { start: node.start, end: node.openEnd, text: tag }
    : intoWorkbook(root, "calcPr", tag);
  file.set(workbookPart, splice(text, [change]));
}
