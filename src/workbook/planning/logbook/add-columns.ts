/** Columns that a logbook lacks, one formula for all its rows. */
import type { Offer } from "../../../adopt/added-columns/columns-to-add";
import type { LogbookMapping } from "../../../adopt/recognising/mapping";
import { refused } from "../../../sheet/refusal";
import type { Host } from "../../../sheet/port";
import type { Plan, Refusal } from "../plan";
import { type NewColumn, planBeside } from "./beside";

function columnOf({ heading, width, isThere, format, formula }: Offer): NewColumn[] {
  if (!formula) return [];
  const content = (row: number) =>
    ({ kind: "formula", formula: formula(row + 1), format }) as const;
  return [{ heading, width, isThere, content }];
}

export async function planColumns(
  host: Host,
  mapping: LogbookMapping,
  chosen: readonly Offer[],
): Promise<Plan | Refusal> {
  const added = chosen.flatMap(columnOf);
  if (added.length === 0) return refused("Choose a column to add first.");
  const { firstRow, lastRow } = mapping.place;
  return planBeside(host, mapping, added, {
    what: "add the columns",
    holds: `one formula each, the same in rows ${String(firstRow + 1)} to ${String(lastRow + 1)}`,
  });
}
