/** Part of a table that a formula refers to: the row of the formula, or whole columns. */
import { columnLetters } from "../../../sheet/cell-name";
import { type Edges, targetOf } from "../../../sheet/formula/reference";
import type { Reference } from "../../../sheet/formula/tree";
import type { KnownTable } from "../facts";
import type { Operand } from "../workings/standing";
import { type Around, fixedBlock, type Located, same } from "../workings/located";
import { noTwin } from "../no-twin";
import { sheetPrefix } from "../../../sheet/sheet-prefix";

/** In a reference these marks of a heading stand behind an apostrophe. */
const escaped = (heading: string): string => heading.replace(/['#[\]@]/g, "'$&");

/** First and last column, counted from the sheet's first. */
function columnsOf(table: KnownTable, names: readonly string[]): readonly [number, number] {
  const { area, columns } = table;
  const at = names.map((name) =>
    columns.findIndex(({ heading }) => heading.toLowerCase() === name.toLowerCase()),
  );
  if (at.includes(-1)) noTwin(`the table ${table.name} has no such column`);
  const first = at[0] ?? 0;
  const last = at.at(-1) ?? area.columns - 1;
  return [area.column + Math.min(first, last), area.column + Math.max(first, last)];
}

function rowsOf(table: KnownTable, sections: readonly string[]): readonly [number, number] {
  const { area, hasHeadings, hasTotals } = table;
  const bottom = area.row + area.rows - 1;
  const data = [area.row + (hasHeadings ? 1 : 0), bottom - (hasTotals ? 1 : 0)] as const;
  if (sections.includes("all")) return [area.row, bottom];
  const wanted = sections.length === 0 ? ["data"] : sections;
  const top = wanted.includes("headers") ? area.row : wanted.includes("data") ? data[0] : bottom;
  const end = wanted.includes("totals") ? bottom : wanted.includes("data") ? data[1] : area.row;
  return [top, end];
}

/** The row the formula itself stands in. */
function inOwnRow(reference: Reference, table: KnownTable, left: number, right: number): Located {
  const prefix = sheetPrefix(table.sheet);
  const written = (column: number): Operand => {
    const heading = table.columns[column - table.area.column]?.heading ?? "";
    const here = `${table.name}[[#This Row],[${escaped(heading)}]]`;
    return ({ home }, mode) =>
      mode === "here" ? here : `${prefix}$${columnLetters(column)}${String(home.row + 1)}`;
  };
  return {
    rows: 1,
    columns: right - left + 1,
    whole: ({ home }, mode) => {
      if (mode === "here") return reference.text;
      const line = String(home.row + 1);
      const first = `${prefix}$${columnLetters(left)}${line}`;
      return left === right ? first : `${first}:$${columnLetters(right)}${line}`;
    },
    cell: (_, column) => written(left + column),
  };
}

export function locateInTable(reference: Reference, { facts, home, ownRow }: Around): Located {
  const target = targetOf(reference);
  if (target.kind !== "structured") return noTwin(`${reference.text} cannot be read`);
  const table = target.table
    ? facts.table(target.table)
    : facts.tableAt(home.sheet, home.row, home.column);
  if (!table) return noTwin(`there is no table ${target.table} in the workbook`);
  const [left, right] = columnsOf(table, target.columns);
  if (target.sections.includes("this row")) {
    if (home.isFixed) noTwin("it moves with the row that uses it");
    if (table.sheet === home.sheet) ownRow.push({ column: left });
    return inOwnRow(reference, table, left, right);
  }
  const [top, bottom] = rowsOf(table, target.sections);
  const edges: Edges = { top, left, bottom, right };
  const text = target.table ? reference.text : table.name + reference.text;
  return fixedBlock(table.sheet, edges, same(text));
}
