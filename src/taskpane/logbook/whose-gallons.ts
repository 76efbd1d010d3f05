/** Gallons that are no nation's, until a person has said whose: once for all columns that are in them. */
import { isBare, type Nation } from "../../core/quantity/measures";
import { nationOf } from "../../adopt/recognising/measures/measured";
import type { MappedColumn } from "../../adopt/recognising/mapping";
import type { FoundTable } from "./found-table";
import type { Action } from "./state";

/** Those columns as they are now; none where the book names a nation elsewhere. It hangs on what was guessed, so that the choice stays. */
export function inGallons({ guess, mapping }: FoundTable): readonly MappedColumn[] {
  const bare = guess.columns.filter(({ unit }) => isBare(unit)).map(({ column }) => column);
  if (nationOf(guess.columns) !== undefined) return [];
  return mapping.columns.filter(({ column, unit }) => bare.includes(column) && unit !== undefined);
}

const plain = (unit: string | undefined): string => unit?.replace(/^(?:US|imp) /, "") ?? "";

export const measuresOf = (columns: readonly MappedColumn[]): readonly string[] => [
  ...new Set(columns.map(({ unit }) => plain(unit)).filter((unit) => isBare(unit))),
];

export const madeOf = (columns: readonly MappedColumn[], nation: Nation): readonly Action[] =>
  columns.flatMap(({ column, role, unit }) =>
    isBare(plain(unit))
      ? [{ do: "column" as const, column, role, unit: `${nation} ${plain(unit)}` }]
      : [],
  );
