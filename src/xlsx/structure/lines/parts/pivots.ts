/** Pivot tables: where they stand, and the cells that they are made of. */
import { splice } from "../../../../sheet/formula/splice";
import { readArea } from "../../../cell-address";
import type { Package } from "../../../package/package";
import { refuse } from "../../../problem";
import { attribute } from "../../../xml/scan";
import { descendants, readTree } from "../../../xml/tree";
import { isSameSheet } from "../../sheets/in-formula";
import { tagOf } from "../in-place";
import type { Lines } from "../lines";
import { movedAreas } from "../refs";

/** A pivot table stands where it stood, whole. */
export function movePivot(file: Package, part: string, lines: Lines): void {
  const text = file.need(part);
  const changes = descendants(readTree(part, text), "location").flatMap((node) => {
    const ref = attribute(node, "ref") ?? "";
    const area = readArea(ref);
    if (!area) return [];
    const [first, many] =
      lines.axis === "row" ? [area.row, area.rows] : [area.column, area.columns];
    const now = movedAreas(ref, lines);
    if (now === undefined || lines.cuts(first, first + many - 1)) {
      return refuse({
        code: "cannot-shift",
        sheet: lines.sheet,
        place: ref,
        trouble: "cuts-pivot",
      });
    }
    return tagOf(text, node, { ref: now });
  });
  if (changes.length > 0) file.set(part, splice(text, changes));
}

export const isPivotCache = (part: string): boolean =>
  /\/pivotCache\/pivotCacheDefinition[^/]*\.xml$/i.test(part);

export function moveSource(file: Package, part: string, lines: Lines): void {
  const text = file.need(part);
  const root = readTree(part, text);
  const changes = ["worksheetSource", "rangeSet"].flatMap((local) =>
    descendants(root, local).flatMap((node) => {
      const ref = attribute(node, "ref");
      const isElsewhere = Object.values(node.attributes).some((each) => each.local === "id");
      if (ref === undefined || isElsewhere) return [];
      if (!isSameSheet(attribute(node, "sheet"), lines.sheet)) return [];
      const now = movedAreas(ref, lines);
      if (now !== undefined) return tagOf(text, node, { ref: now });
      return refuse({
        code: "cannot-shift",
        sheet: lines.sheet,
        place: ref,
        trouble: "loses-source",
      });
    }),
  );
  if (changes.length > 0) file.set(part, splice(text, changes));
}
