/** From a bench record to a row in the workbook: read, plan, agree, write, read back. */
import type { Host } from "../../../sheet/port";
import type { TitrationRecord } from "../../record/titration-record";
import { titrations } from "../../tables/titrations";
import type { Confirmed, Plan, RecordOutcome, Refusal } from "../plan";
import { batchesThatFollow } from "./batches-that-follow";
import { planRecord, recordRow } from "./plan-record";
import type { Pause } from "../settle";
import type { RowChoice } from "./target-row";

/** What recording would do. Reads, never writes. */
export const planTitration = (
  host: Host,
  record: TitrationRecord,
  choice?: RowChoice,
): Promise<Plan | Refusal> => planRecord(host, titrations, record, choice, batchesThatFollow);

/** Plans anew and writes only what was agreed to. `pause` lets slow functions answer. */
export const recordTitration = (
  host: Host,
  record: TitrationRecord,
  confirmed: Confirmed | undefined,
  pause?: Pause,
  choice?: RowChoice,
): Promise<RecordOutcome> =>
  recordRow(host, titrations, record, {
    label: `Record titration of ${record.lot}`,
    confirmed,
    pause,
    choice,
    remarks: batchesThatFollow,
  });
