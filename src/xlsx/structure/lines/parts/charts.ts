/**
 * What charts are drawn from. Beside each reference stands what its cells last held: where they are as
 * many as before that stays true, and otherwise it goes; the program reads the cells again.
 */
import { type Replacement, splice } from "../../../../sheet/formula/splice";
import { columnNumber } from "../../../../sheet/cell-name";
import type { Package } from "../../../package/package";
import { refuse } from "../../../problem";
import { readTree, type Node } from "../../../xml/tree";
import { textOf, without } from "../in-place";
import type { Lines } from "../lines";
import { movedFormula } from "../moved-formula";

const isCache = ({ local }: Node): boolean =>
  local === "numCache" || local === "strCache" || local === "multiLvlStrCache" || local === "lvl";

/** How many lines its areas have: what tells a moved reference from one that grew or shrank. */
function lengths(formula: string): string {
  const sizes = [...formula.matchAll(/\$?([A-Z]{1,3})\$?(\d+):\$?([A-Z]{1,3})\$?(\d+)/gi)].map(
    ([, left, top, right, bottom]) =>
      `${String(Number(bottom) - Number(top))}x${String(columnNumber(right ?? "") - columnNumber(left ?? ""))}`,
  );
  return `${sizes.join()}${formula.includes("#REF!") ? "#" : ""}`;
}

function changesIn(part: string, node: Node, lines: Lines, changes: Replacement[]): void {
  for (const child of node.children) {
    if ((child.local === "f" || child.local === "sqref") && child.text !== "") {
      const now = movedFormula(child.text, undefined, lines);
      if (now === undefined) {
        refuse({
          code: "cannot-shift",
          sheet: lines.sheet,
          place: part,
          trouble: "unreadable-formula",
        });
      }
      if (now === undefined || now === child.text) continue;
      changes.push(textOf(child, now));
      if (lengths(now) !== lengths(child.text))
        changes.push(...node.children.filter(isCache).map(without));
    } else if (!isCache(child)) changesIn(part, child, lines, changes);
  }
}

export const isChart = (part: string): boolean =>
  /\/charts\/(?:chart|chartEx)[^/]*\.xml$/i.test(part);

export function moveChart(file: Package, part: string, lines: Lines): void {
  const text = file.need(part);
  const changes: Replacement[] = [];
  changesIn(part, readTree(part, text), lines, changes);
  if (changes.length > 0) file.set(part, splice(text, changes));
}
