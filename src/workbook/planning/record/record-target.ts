/** A table of ours that records go into, and the words a plan uses about one of its rows. */
import type { Block } from "../../../sheet/port";
import type { TableShape } from "../../tables/column";
import type { Plan } from "../plan";

export interface RecordTarget {
  readonly shape: TableShape;
  /** One record, in words: "titration". */
  readonly what: string;
  /** Headings without which a table of that name is something else. */
  readonly essential: readonly string[];
  /** Headings whose values tell one record from another. */
  readonly telling: readonly string[];
  /** The same in words: "same date, same lot, same readings". */
  readonly tellingWords: string;
}

export const rowWords = ({ what }: RecordTarget, row: Block): Pick<Plan, "what" | "where"> => ({
  what: `record the ${what}`,
  where: `row ${String(row.row + 1)} of the sheet ${row.sheet}`,
});
