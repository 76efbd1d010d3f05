/** From a batch decided in the pane to a row of `Batches`: read, plan, agree, write, read back. */
import type { Host } from "../../../sheet/port";
import type { BatchRecord } from "../../record/batch-record";
import { batchRowValues } from "../../record/batch-row-values";
import { batches } from "../../tables/batches";
import type { Confirmed, Plan, RecordOutcome, Refusal } from "../plan";
import { planRecord, recordRow } from "./plan-record";
import type { RecordTarget } from "./record-target";
import type { Pause } from "../settle";
import type { RowChoice } from "./target-row";

const into: RecordTarget = {
  shape: batches,
  what: "batch",
  essential: ["Lots", "Amount", "Unit"],
  telling: ["Date", "Batch", "Lots", "Second lot", "Amount", "Unit"],
  tellingWords: "same date, same number, same lots, same amount",
};

/** What recording would do. Reads, never writes. */
export const planBatch = (
  host: Host,
  record: BatchRecord,
  choice?: RowChoice,
): Promise<Plan | Refusal> => planRecord(host, into, batchRowValues(record), choice);

/** Plans anew and writes only what was agreed to. `pause` lets slow functions answer. */
export const recordBatch = (
  host: Host,
  record: BatchRecord,
  confirmed: Confirmed | undefined,
  pause?: Pause,
  choice?: RowChoice,
): Promise<RecordOutcome> =>
  recordRow(host, into, batchRowValues(record), {
    label: `Record batch ${record.batch}`.trim(),
    confirmed,
    pause,
    choice,
  });
