/**
 * What was agreed of logbooks, kept by the browser for other workbooks under the same headings. Kept as the
 * rows of a sheet of remembered columns, so that it is believed as little as such a sheet.
 */
import { type LogbookMapping, mappingFrom } from "../../adopt/recognising/mapping";
import { rememberedMapping, rememberedRows } from "../../adopt/recognising/remembered";
import { foundTable, type FoundTable, type ReadTable } from "./found-table";
import { asIn, headingsOf } from "./same-headings";

/** Its name in the browser's storage. */
export const learnedTask = "logbook-columns";

export interface Learned {
  readonly headings: string;
  /** The sheet that was agreed to. */
  readonly sheet: string;
  readonly rows: readonly (readonly (string | number)[])[];
}

/** Older ones are forgotten. */
const mostKept = 24;

/** Its place on a sheet is its own: another logbook starts elsewhere. */
function anywhere<
  T extends Pick<LogbookMapping, "sheet" | "place"> & {
    readonly columns: readonly { readonly column: number }[];
  },
>(table: T): T {
  const first = table.columns[0]?.column ?? 0;
  return {
    ...table,
    sheet: "",
    place: { ...table.place, headingRow: 0 },
    columns: table.columns.map((each) => ({ ...each, column: each.column - first })),
  };
}

function learnedFrom(table: FoundTable): Learned {
  const { mapping } = table;
  return {
    headings: headingsOf(table),
    sheet: mapping.sheet,
    rows: rememberedRows(anywhere({ ...mapping, left: [] })),
  };
}

/** The latest first; what was agreed before under the same headings gives way. */
export function withAgreed(known: readonly Learned[], agreed: readonly FoundTable[]): Learned[] {
  const now = agreed.filter(({ guess }) => guess.columns.length > 1).map(learnedFrom);
  const all = [...now, ...known];
  return all
    .filter((each, at) => all.findIndex(({ headings }) => headings === each.headings) === at)
    .slice(0, mostKept);
}

const isRow = (value: unknown): value is readonly (string | number)[] =>
  Array.isArray(value) &&
  value.every((each) => typeof each === "string" || typeof each === "number");

/** Out of storage, as far as it is such. */
export function learnedIn(value: unknown): Learned[] {
  if (!Array.isArray(value)) return [];
  return value.flatMap((each: Partial<Learned> | null) => {
    const { headings, sheet, rows } = each ?? {};
    if (typeof headings !== "string" || typeof sheet !== "string" || !Array.isArray(rows))
      return [];
    return [{ headings, sheet, rows: rows.filter(isRow) }];
  });
}

/** A table that nobody agreed to in this workbook, read as one with the same headings was. */
export function asLearned(table: ReadTable, known: readonly Learned[]): ReadTable {
  if (table.remembered !== undefined) return table;
  const own = foundTable(table);
  const found = known.find(({ headings }) => headings === headingsOf(own));
  const agreed = found && rememberedMapping(anywhere(table.guess), found.rows);
  return agreed ? { ...table, learned: { from: found.sheet, mapping: asIn(own, agreed) } } : table;
}

/** As it would have been read without anything learned. */
export function readAfresh({ learned, ...table }: FoundTable): FoundTable {
  return learned === undefined
    ? table
    : { ...table, mapping: mappingFrom(table.guess), isAgreed: false };
}
