/** Tables: where they stand, what is filtered and sorted in them, the formulas of their columns. */
import { type Replacement, splice } from "../../../../sheet/formula/splice";
import type { Area } from "../../../../sheet/area";
import { areaName } from "../../../../sheet/cell-name";
import type { Sheet, Table } from "../../../model";
import type { Package } from "../../../package/package";
import { refuse } from "../../../problem";
import { attribute } from "../../../xml/scan";
import { descendants, type Node, readTree } from "../../../xml/tree";
import { isSameSheet } from "../../sheets/in-formula";
import { tagOf, textOf, without } from "../in-place";
import type { Lines } from "../lines";
import { byLines, movedFormula, type Moving } from "../moved-formula";
import { movedAreas } from "../refs";

/** In a column's formula a row without a dollar sign is counted from the row it is in. */
const byTable =
  (table: Table, lines: Lines, isMoving: boolean): Moving =>
  (first, last) => {
    if ((first.mark && last.mark) || lines.axis === "column" || !isMoving) {
      return byLines(lines)(first, last);
    }
    const by = (lines.area(table.area)?.row ?? table.area.row) - table.area.row;
    const line = (corner: typeof first) =>
      corner.mark ? lines.near(corner.line) : corner.line + by;
    return [line(first), line(last)];
  };

const placed = ["autoFilter", "sortState", "sortCondition"];

/** Without the row of totals: a row put in just before that is one that is filtered. */
const filtered = ({ hasTotals }: Table, area: Area): Area => ({
  ...area,
  rows: area.rows - (hasTotals ? 1 : 0),
});

function placesIn(text: string, root: Node, table: Table, area: Area, lines: Lines): Replacement[] {
  const whole = areaName(filtered(table, table.area));
  const moved = (ref: string): string | undefined =>
    ref === whole ? areaName(filtered(table, area)) : movedAreas(ref, lines);
  return placed.flatMap((local) =>
    descendants(root, local).flatMap((node) => {
      const ref = attribute(node, "ref");
      const now = ref === undefined ? ref : moved(ref);
      if (now === undefined) return ref === undefined ? [] : [without(node)];
      return tagOf(text, node, { ref: now });
    }),
  );
}

function moveTable(file: Package, sheet: Sheet, table: Table, lines: Lines): void {
  const isMoving = isSameSheet(sheet.name, lines.sheet);
  const text = file.need(table.part);
  const root = readTree(table.part, text);
  const area = isMoving ? lines.area(table.area) : table.area;
  if (!area) return;
  const formulas = ["calculatedColumnFormula", "totalsRowFormula"].flatMap((local) =>
    descendants(root, local).flatMap((node) => {
      if (node.text === "") return [];
      const moving =
        local === "totalsRowFormula" ? byLines(lines) : byTable(table, lines, isMoving);
      const now = movedFormula(node.text, sheet.name, lines, moving);
      if (now === undefined) {
        const place = table.name;
        refuse({ code: "cannot-shift", sheet: sheet.name, place, trouble: "unreadable-formula" });
      }
      return now === undefined || now === node.text ? [] : [textOf(node, now)];
    }),
  );
  const places = isMoving
    ? [...tagOf(text, root, { ref: areaName(area) }), ...placesIn(text, root, table, area, lines)]
    : [];
  if (formulas.length + places.length > 0) {
    file.set(table.part, splice(text, outermost([...formulas, ...places])));
  }
}

/** What stands in something that goes, goes with it. */
const outermost = (changes: readonly Replacement[]): Replacement[] =>
  changes.filter(
    (each) =>
      !changes.some(
        (other) => other !== each && other.start <= each.start && each.end <= other.end,
      ),
  );

export function moveTables(file: Package, sheets: readonly Sheet[], lines: Lines): void {
  for (const sheet of sheets)
    for (const table of sheet.tables) moveTable(file, sheet, table, lines);
}
