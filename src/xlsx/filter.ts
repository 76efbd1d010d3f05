/** Filters of a file as plain values. */
import type { Area } from "../sheet/area";

/** What a column of a filter asks of its cells. */
export type Criterion =
  /** As cells show them; "" for cells without anything. */
  | { readonly kind: "words"; readonly words: readonly string[] }
  | { readonly kind: "figures"; readonly atLeast?: number; readonly atMost?: number }
  /** By colour, the ten largest and the like: kept, and not looked into. */
  | { readonly kind: "other" };

export interface Filter {
  /** Headings and rows. */
  readonly area: Area;
  /** Those that ask something; columns counted on the sheet. */
  readonly columns: readonly { readonly column: number; readonly criterion: Criterion }[];
}
