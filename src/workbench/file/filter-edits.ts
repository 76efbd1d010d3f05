/** What a file is told of filters: of each filtered area that changed, what it asks now and which rows it hides. */
import type { Area, Edit } from "../../xlsx";
import type { FilterState } from "./filter-state";
import type { SheetState } from "./grid-state";
import type { SheetPair } from "./sheet-edits";

interface Filtered {
  readonly area: Area;
  readonly table?: string;
}

/** The table a heading stands in as it now is, or the area as it was. */
function filteredBy({ row, column, area }: FilterState, { tables }: SheetState): Filtered {
  const table = tables.find(
    (each) => each.row === row && each.column <= column && column < each.column + each.columns,
  );
  if (!table) return { area };
  const { name, rows, columns } = table;
  return { table: name, area: { row: table.row, column: table.column, rows, columns } };
}

const told = (filters: readonly FilterState[], hidden: readonly number[]): string =>
  JSON.stringify([filters.map(({ column, criterion }) => [column, criterion]), hidden]);

const within = ({ row, column, columns }: Area, filters: readonly FilterState[] = []) =>
  filters.filter(
    (each) => each.row === row && each.column >= column && each.column < column + columns,
  );

const hiddenOf = ({ row, rows }: Area, sheet: SheetState | undefined): number[] =>
  [...(sheet?.hidden ?? [])]
    .filter((each) => each > row && each < row + rows)
    .sort((a, b) => a - b);

export function filterEdits({ before, now }: SheetPair): Edit[] {
  const areas = new Map<string, Filtered>();
  for (const filter of [...(before?.filters ?? []), ...now.filters]) {
    const filtered = filteredBy(filter, now);
    areas.set(`${String(filtered.area.row)} ${String(filtered.area.column)}`, filtered);
  }
  return [...areas.values()].flatMap(({ area, table }): Edit[] => {
    const filters = within(area, now.filters);
    const hidden = hiddenOf(area, now);
    const was = told(within(area, before?.filters), hiddenOf(area, before));
    if (told(filters, hidden) === was) return [];
    const columns = filters.map(({ column, criterion }) => ({ column, criterion }));
    const of = table === undefined ? {} : { table };
    return [{ do: "filter", sheet: now.name, area, columns, hidden, ...of }];
  });
}
