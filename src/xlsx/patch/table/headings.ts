/** The headings of tables: cells of the sheet and names in the table's part, which must agree. */
import { named } from "../../cell-address";
import type { Table } from "../../model";
import { refuse } from "../../problem";
import { refuseHeading } from "./grow";
import type { TableDraft } from "../sheet-draft";

/** What will stand in a heading's cell. */
function headingAt({ sheet, area }: TableDraft, column: number) {
  const place = { row: area.row, column };
  const plan = sheet.wanted.get(place)?.plan;
  if (plan?.kind === "value") return plan.value;
  if (plan !== undefined && plan.kind !== "keep") return undefined;
  return sheet.cellsIn({ ...place, rows: 1, columns: 1 })[0]?.value;
}

/** Names the columns that are new, by the cells above them. */
export function takeHeadings(table: TableDraft): void {
  const { area, formulas, columns } = table;
  for (let at = area.column + columns.length; at < area.column + area.columns; at++) {
    const heading = headingAt(table, at);
    if (typeof heading !== "string") {
      const trouble = heading === undefined ? "empty" : "not-text";
      return refuse({ code: "bad-heading", table: table.name, heading: "", trouble });
    }
    refuseHeading(table, heading);
    const formula = formulas.get(heading.toLowerCase());
    columns.push({ heading, ...(formula ? { formula } : {}) });
  }
}

/** Formulas go by headings, here and maybe in other workbooks, so those that are there stay. */
export function refuseChangedHeadings(table: TableDraft, before: Table): void {
  if (!before.hasHeadings) return;
  const { sheet } = table;
  const row = { ...before.area, rows: 1 };
  for (const { row: at, column, plan } of sheet.wanted.within(row)) {
    const known = before.columns[column - before.area.column]?.heading;
    if (plan.kind === "keep" || (plan.kind === "value" && plan.value === known)) continue;
    refuse({ code: "heading-cell", cell: named(sheet.name, at, column), table: table.name });
  }
}
