/** From a batch decided in the pane to a row of `Batches`: read, plan, agree, write, read back. */
import type { Host } from "../../../sheet/port";
import type { BatchRecord } from "../../record/batch-record";
import { batchRowValues } from "../../record/batch-row-values";
import { batches } from "../../tables/batches";
import { carryOut } from "../carry-out";
import type { Confirmed, Plan, RecordOutcome, Refusal } from "../plan";
import { planRecord } from "./plan-record";
import type { RecordTarget } from "./record-target";
import type { Pause } from "../settle";

const into: RecordTarget = {
  shape: batches,
  what: "batch",
  essential: ["Lots", "Amount", "Unit"],
  telling: ["Date", "Batch", "Lots", "Second lot", "Amount", "Unit"],
  tellingWords: "same date, same number, same lots, same amount",
};

/** What recording would do. Reads, never writes. */
export const planBatch = (host: Host, record: BatchRecord): Promise<Plan | Refusal> =>
  planRecord(host, into, batchRowValues(record));

/** Plans anew and writes only what was agreed to. `pause` lets slow functions answer. */
export const recordBatch = (
  host: Host,
  record: BatchRecord,
  confirmed: Confirmed | undefined,
  pause?: Pause,
): Promise<RecordOutcome> =>
  carryOut(
    host,
    `Record batch ${record.batch}`.trim(),
    () => planBatch(host, record),
    confirmed,
    pause,
  );
