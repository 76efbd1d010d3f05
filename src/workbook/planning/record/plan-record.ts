/** What recording into a table of ours would do: a row of the one that is there, or a new one. */
import { type Host, isFault } from "../../../sheet/port";
import type { RowValue } from "../../record/row-values";
import type { Plan, Refusal } from "../plan";
import { planRow } from "./plan-row";
import { planTable } from "../plan-table";
import { readLogbook } from "../logbook/read-logbook";
import type { RecordTarget } from "./record-target";
import { refusal } from "../refusal";

/** Reads, never writes. */
export async function planRecord(
  host: Host,
  into: RecordTarget,
  values: readonly RowValue[],
): Promise<Plan | Refusal> {
  const snapshot = await readLogbook(host, into.shape.name);
  if (isFault(snapshot)) return refusal(snapshot);
  return snapshot.logbook
    ? planRow(snapshot, snapshot.logbook, into, values)
    : planTable(snapshot, into, values);
}
