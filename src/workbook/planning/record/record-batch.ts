/** From a batch decided in the pane to a row of `Batches`: read, plan, agree, write, read back. */
import type { Host } from "../../../sheet/port";
import type { BatchRecord } from "../../record/batch-record";
import { batches } from "../../tables/batches";
import type { Confirmed, Plan, RecordOutcome, Refusal } from "../plan";
import { planRecord, recordRow } from "./plan-record";
import type { Pause } from "../settle";
import type { RowChoice } from "./target-row";

/** What recording would do. Reads, never writes. */
export const planBatch = (
  host: Host,
  record: BatchRecord,
  choice?: RowChoice,
): Promise<Plan | Refusal> => planRecord(host, batches, record, choice);

/** Plans anew and writes only what was agreed to. `pause` lets slow functions answer. */
export const recordBatch = (
  host: Host,
  record: BatchRecord,
  confirmed: Confirmed | undefined,
  pause?: Pause,
  choice?: RowChoice,
): Promise<RecordOutcome> =>
  recordRow(host, batches, record, {
    label: `Record batch ${record.batch}`.trim(),
    confirmed,
    pause,
    choice,
  });
