/** What is kept though it is not shown, in words: "2 charts on Log book". */
import type { Kept, KeptKind } from "./model";

/** Kinds that are not counted. */
const uncounted: ReadonlySet<KeptKind> = new Set<KeptKind>([
  "outside data",
  "macros",
  "data model",
  "custom XML",
  "rich text",
]);

const singular = (kind: KeptKind): string =>
  kind === "links to other workbooks" ? "link to another workbook" : kind.replace(/s$/, "");

export function keptWords({ what, count, sheet }: Kept): string {
  const counted = count === 1 ? `1 ${singular(what)}` : `${String(count)} ${what}`;
  const words = uncounted.has(what) ? what : counted;
  return sheet === undefined ? words : `${words} on ${sheet}`;
}
