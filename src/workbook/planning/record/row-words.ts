/** The words a plan uses about a row of a table that records go into. */
import type { Block } from "../../../sheet/port";
import type { RecordTable } from "../../tables/column";
import type { Plan } from "../plan";

export const rowWords = ({ what }: RecordTable, row: Block): Pick<Plan, "what" | "where"> => ({
  what: `record the ${what}`,
  where: `row ${String(row.row + 1)} of the sheet ${row.sheet}`,
});
