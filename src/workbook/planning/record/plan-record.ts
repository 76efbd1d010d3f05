/** Recording into a table of ours: into a row of the one that is there, or into a new one. */
import { type CellContent, type Fault, type Host, isFault } from "../../../sheet/port";
import { headingsOf, type RecordTable } from "../../tables/column";
import { rowValues } from "../../tables/row-values";
import { carryOut } from "../carry-out";
import { finished } from "../finished";
import type { Confirmed, Plan, RecordOutcome, Refusal, Remark } from "../plan";
import { planRow } from "./plan-row";
import { planTable } from "../plan-table";
import { readLogbook } from "../logbook/read-logbook";
import { refusal } from "../refusal";
import type { Pause } from "../settle";
import type { RowChoice } from "./target-row";
import { troublesOf } from "../troubles";

/** Reads, never writes. */
export async function planRecord<Of>(
  host: Host,
  into: RecordTable<Of>,
  record: Of,
  choice?: RowChoice,
  remarks: Recording<Of>["remarks"] = () => Promise.resolve([]),
): Promise<Plan | Refusal> {
  const snapshot = await readLogbook(host, into.name);
  if (isFault(snapshot)) return refusal(snapshot);
  const values = rowValues(into, record);
  const plan = snapshot.logbook
    ? planRow(snapshot, snapshot.logbook, into, values, choice)
    : planTable(snapshot, into, values);
  if (plan.kind !== "plan") return plan;
  const more = await remarks(host, record);
  if (isFault(more)) return refusal(more);
  return more.length === 0 ? plan : finished({ ...plan, remarks: [...plan.remarks, ...more] });
}

export interface Recording<Of> {
  /** Other things that are to be known, or agreed to, before it is written. */
  readonly remarks?: (host: Host, record: Of) => Promise<readonly Remark[] | Fault>;
  /** What the one undo step is called. */
  readonly label: string;
  readonly confirmed: Confirmed | undefined;
  /** Lets slow functions answer. */
  readonly pause: Pause | undefined;
  readonly choice: RowChoice | undefined;
}

/** Plans anew, writes only what was agreed to, and says which results could not be worked out. */
export const recordRow = <Of>(
  host: Host,
  into: RecordTable<Of>,
  record: Of,
  { choice, remarks, ...how }: Recording<Of>,
): Promise<RecordOutcome> =>
  recordPlanned(host, into, () => planRecord(host, into, record, choice, remarks), how);

/** The same of a plan that is made elsewhere. */
export async function recordPlanned(
  host: Host,
  into: RecordTable,
  planned: () => Promise<Plan | Refusal>,
  { label, confirmed, pause }: Pick<Recording<never>, "label" | "confirmed" | "pause">,
): Promise<RecordOutcome> {
  const outcome = await carryOut(host, label, planned, confirmed, pause);
  if (outcome.kind !== "recorded" || outcome.differences.length > 0) return outcome;
  const isError = (result: CellContent): boolean => typeof result === "object";
  if (!Object.values(outcome.results).some(isError)) return outcome;
  const troubles = await troublesOf(host, outcome.plan, headingsOf(into, "mayLack"));
  if (troubles.length === 0) return outcome;
  const sentence = `Written in ${outcome.plan.where}, but not every result could be worked out.`;
  return { ...outcome, troubles, sentence };
}
