/** Headings are matched by their words: capitals, outer spaces and doubled spaces do not matter. */
const plain = (heading: string): string => heading.trim().replace(/\s+/g, " ").toLowerCase();

export const isHeading = (one: string, other: string): boolean => plain(one) === plain(other);

/** The place of a heading among those of a table; undefined when it has none. */
export function placeOf(heading: string, headings: readonly string[]): number | undefined {
  const place = headings.findIndex((each) => isHeading(each, heading));
  return place < 0 ? undefined : place;
}
