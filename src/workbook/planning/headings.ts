import type { CellContent } from "../../sheet/port";

/** Headings are matched by their words: capitals, outer spaces and doubled spaces do not matter. */
const plain = (heading: string): string => heading.trim().replace(/\s+/g, " ").toLowerCase();

export const isHeading = (one: string, other: string): boolean => plain(one) === plain(other);

/** The place of a heading among those of a table; undefined when it has none. */
export function placeOf(heading: string, headings: readonly string[]): number | undefined {
  const wanted = plain(heading);
  const place = headings.findIndex((each) => each === heading || plain(each) === wanted);
  return place < 0 ? undefined : place;
}

/** What stands under a heading in one row; "" under one that the table lacks. */
export type Under = (heading: string) => CellContent;

/** A table's rows by their headings. Where a heading stands is looked up once, and not for every row. */
export function rowsUnder(
  headings: readonly string[],
  rows: readonly (readonly CellContent[])[],
): Under[] {
  const places = new Map<string, number | undefined>();
  const placed = (heading: string): number | undefined => {
    if (!places.has(heading)) places.set(heading, placeOf(heading, headings));
    return places.get(heading);
  };
  return rows.map((row) => (heading) => row[placed(heading) ?? -1] ?? "");
}
