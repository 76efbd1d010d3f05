/**
 * Which cells a reference stands for: B2:D2, 'My sheet'!A1, A:A, Table[[#This Row],[Col]] or a defined
 * name. Read by a kept library; what the open workbook knows is asked of it.
 */
import { parseA1Ref, parseStructRef } from "@borgar/fx";

/** Counted from 0, as the engine does. */
export interface CellPlace {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** A block of cells of one sheet, all four edges counted from 0 and within it. */
export interface Area {
  readonly sheet: string;
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

export interface KnownTable extends Area {
  readonly headings: readonly string[];
}

export interface KnownNames {
  /** The cells in use on a sheet, for whole rows and columns; undefined when there is no such sheet. */
  extent(sheet: string): Area | undefined;
  table(name: string): KnownTable | undefined;
  /** What a defined name refers to, without its equals sign. */
  definedName(name: string): string | undefined;
}

/** The rows of a table that a part of it is about; undefined for this row when outside the table. */
function tableRows(
  table: KnownTable,
  sections: readonly string[],
  from: CellPlace,
): { top: number; bottom: number } | undefined {
  const firstRow = table.top + 1;
  if (sections.includes("this row")) {
    const isInside = from.sheet === table.sheet && firstRow <= from.row && from.row <= table.bottom;
    return isInside ? { top: from.row, bottom: from.row } : undefined;
  }
  const all = sections.includes("all");
  const headings = all || sections.includes("headers");
  const data = all || sections.includes("data") || sections.length === 0;
  return { top: headings ? table.top : firstRow, bottom: data ? table.bottom : table.top };
}

function structured(reference: string, from: CellPlace, known: KnownNames): Area | undefined {
  const parsed = parseStructRef(reference);
  const table = parsed?.table === undefined ? undefined : known.table(parsed.table);
  if (!parsed || !table) return undefined;
  const rows = tableRows(table, parsed.sections ?? [], from);
  const columns = (parsed.columns ?? []).map((heading) =>
    table.headings.findIndex((each) => each.toLowerCase() === heading.toLowerCase()),
  );
  if (!rows || columns.includes(-1)) return undefined;
  return {
    sheet: table.sheet,
    ...rows,
    left: table.left + (columns[0] ?? 0),
    right: table.left + (columns.at(-1) ?? table.headings.length - 1),
  };
}

/** The cells a reference stands for, as seen from the cell whose formula holds it. */
export function areaOf(reference: string, from: CellPlace, known: KnownNames): Area | undefined {
  const table = known.table(reference);
  if (table) return { ...table, top: table.top + 1 };
  if (reference.includes("[")) return structured(reference, from, known);
  const parsed = parseA1Ref(reference);
  if (!parsed) return undefined;
  if ("name" in parsed) {
    const meaning = known.definedName(parsed.name);
    return meaning === undefined || meaning === reference
      ? undefined
      : areaOf(meaning, from, known);
  }
  const extent = known.extent(String(parsed.context?.[0] ?? from.sheet));
  if (!extent) return undefined;
  const { top, left, bottom, right } = parsed.range;
  return {
    sheet: extent.sheet,
    top: top ?? extent.top,
    left: left ?? extent.left,
    bottom: bottom ?? extent.bottom,
    right: right ?? extent.right,
  };
}
