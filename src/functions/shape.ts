/** Answers that spill in the shape of the range they answer for. */
import type { Unit } from "../core/quantity/quantity";
import type { Slot } from "../core/titration/pairs";
import type { List } from "./arguments";
import type { Result, ResultTable } from "./answer";

/** One answer for each cell, "" where the cell was not filled in. */
export const inShape = <R extends Result>(
  shape: Pick<List<Unit>, "rows" | "columns">,
  values: readonly (R extends object ? Slot<R> : R | null)[],
): ResultTable =>
  Array.from({ length: shape.rows }, (_, row) =>
    Array.from(
      { length: shape.columns },
      (__, column): Result => values[row * shape.columns + column] ?? "",
    ),
  );
