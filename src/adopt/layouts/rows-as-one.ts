/**
 * One row a titration: a lot that stands in several rows, one below the other, each with a titre, and with
 * results in one of them. They are read as one row with several titres.
 */
import { isDitto } from "../recognising/ditto";
import { columnOf, columnsOf, type LogbookMapping } from "../recognising/mapping";
import type { RoleId } from "../recognising/roles";
import { endOf, heldCell, isHeld, type SheetCells } from "../recognising/sheet-cells";
import { heldRoles } from "../recheck/reading/figure-roles";
import { type Book, furtherColumns, widened } from "./split-titres";

const names: readonly RoleId[] = ["lot", "batch", "date"];
const results: ReadonlySet<RoleId> = new Set(heldRoles);

type Text = (row: number, column: number) => string;

const textIn =
  (cells: SheetCells): Text =>
  (row, column) => {
    const { value } = heldCell(cells, row, column);
    return typeof value === "object" ? "" : isDitto(value) ? "" : String(value).trim();
  };

/** Every result of a row is left out, or says what the first one says. */
const repeats = (columns: readonly number[], text: Text, first: number, row: number): boolean =>
  columns.every((column) => {
    const held = text(row, column);
    return held === "" || held === text(first, column);
  });

/** Runs of rows that belong to one titration. */
function groupsOf({ mapping, cells }: Book): number[][] {
  const text = textIn(cells);
  const naming = names.flatMap((role) => columnOf(mapping, role)?.column ?? []);
  const titre = columnOf(mapping, "titre")?.column ?? -1;
  const worked = mapping.columns.filter(({ role }) => results.has(role)).map((each) => each.column);
  const { firstRow, lastRow } = mapping.place;
  const groups: number[][] = [];
  for (let row = firstRow; row <= lastRow; row += 1) {
    const group = groups.at(-1);
    const first = group?.[0];
    const isHere = text(row, titre) !== "";
    const isSame =
      first !== undefined &&
      isHere &&
      row === (group?.at(-1) ?? 0) + 1 &&
      naming.every(
        (column) => text(row, column) === "" || text(row, column) === text(first, column),
      );
    const holdsNone = first !== undefined && worked.every((column) => text(row, column) === "");
    const onlyFirst = first !== undefined && worked.every((column) => text(first, column) === "");
    if (isSame && (holdsNone || onlyFirst || repeats(worked, text, first, row))) group?.push(row);
    else if (isHere) groups.push([row]);
    else groups.push([]);
  }
  return groups.filter((group) => group.length > 0);
}

/** So many of the groups have more than one row, or the rows are left as they are. */
const leastShare = 0.4;

/** Titrations of one row each, with the lot's name said again and results of their own, are no such table. */
function isSuch(groups: readonly (readonly number[])[]): boolean {
  const several = groups.filter((group) => group.length > 1).length;
  return several >= 1 && several >= groups.length * leastShare;
}

/** Does a table with one column of titres, named by lot or batch, say them one below the other? */
const mayBeSuch = (mapping: LogbookMapping): boolean =>
  columnsOf(mapping, "titre").length === 1 &&
  (columnOf(mapping, "lot") ?? columnOf(mapping, "batch")) !== undefined;

export function withRowsAsOne(book: Book): Book {
  const { mapping, cells } = book;
  if (!mayBeSuch(mapping)) return book;
  const groups = groupsOf(book);
  if (!isSuch(groups)) return book;
  const [titre] = columnsOf(mapping, "titre");
  if (!titre) return book;
  const text = textIn(cells);
  const worked = mapping.columns.filter(({ role }) => results.has(role)).map((each) => each.column);
  const most = Math.max(...groups.map((group) => group.length));
  const end = endOf(cells).column;
  const [mass] = columnsOf(mapping, "sampleMass");
  const wide = widened(cells, 2 * (most - 1));
  const { columns } = mapping;
  for (const group of groups) {
    if (group.length === 1) continue;
    const home =
      group.find((row) => worked.some((column) => text(row, column) !== "")) ?? group[0] ?? 0;
    group.forEach((row, at) => {
      const place = at === 0 ? titre.column : end + at - 1;
      wide.put(home, place, heldCell(cells, row, titre.column).value);
      if (mass)
        wide.put(
          home,
          at === 0 ? mass.column : end + most + at - 2,
          heldCell(cells, text(row, mass.column) === "" ? (group[0] ?? row) : row, mass.column)
            .value,
        );
    });
    for (const { column, role } of columns) {
      if (role === "titre" || (role === "sampleMass" && mass)) continue;
      const from = group.find(
        (row) => isHeld(heldCell(cells, row, column)) && text(row, column) !== "",
      );
      if (from === undefined || from === home) continue;
      const { value, format } = heldCell(cells, from, column);
      wide.put(home, column, value, format);
    }
    for (const row of group)
      if (row !== home) for (const { column } of columns) wide.put(row, column, "");
  }
  return {
    cells: wide.cells,
    mapping: {
      ...mapping,
      columns: [
        ...columns.map((each) =>
          each === mass ? { ...each, heading: `${each.heading} #1` } : each,
        ),
        ...furtherColumns(titre, end, most - 1),
        ...(mass
          ? furtherColumns(mass, end + most - 1, most - 1).map((each, at) => ({
              ...each,
              heading: `${each.heading} #${String(at + 2)}`,
            }))
          : []),
      ],
    },
  };
}
