/**
 * The order that rows take when they are sorted by one of their cells: numbers, texts, TRUE and FALSE,
 * errors; downwards the other way round. Rows without anything in that cell stay behind the others in
 * both directions, and rows that nobody has begun behind those. Rows that are alike keep their order.
 */
import type { GivenCell } from "../engine/cells";

export type Direction = "up" | "down";

export interface Sortable {
  readonly key: GivenCell;
  /** Nothing was typed in the row: it waits to be filled in. */
  readonly isWaiting: boolean;
}

const isBlank = (key: GivenCell): boolean => key === null || key === "";

function kindOf(key: GivenCell): number {
  if (typeof key === "number") return 0;
  if (typeof key === "string") return 1;
  return typeof key === "boolean" ? 2 : 3;
}

/** Large and small letters are one, accents are told apart, as spreadsheets do. */
const words = new Intl.Collator("en-GB", { sensitivity: "accent" });

function compared(a: GivenCell, b: GivenCell): number {
  const kinds = kindOf(a) - kindOf(b);
  if (kinds !== 0) return kinds;
  if (typeof a === "string" && typeof b === "string") return words.compare(a, b);
  // errors are all alike
  return typeof a === "object" ? 0 : Number(a) - Number(b);
}

const standing = ({ key, isWaiting }: Sortable): number => (isWaiting ? 2 : isBlank(key) ? 1 : 0);

/** Of each place the row that comes there, by its place before. */
export function sortedOrder(rows: readonly Sortable[], direction: Direction): number[] {
  const sign = direction === "up" ? 1 : -1;
  const places = rows.map((_, place) => place);
  return places.sort((one, other) => {
    const [a, b] = [rows[one] as Sortable, rows[other] as Sortable];
    const stand = standing(a) - standing(b);
    if (stand !== 0) return stand;
    return standing(a) > 0 ? one - other : sign * compared(a.key, b.key) || one - other;
  });
}
