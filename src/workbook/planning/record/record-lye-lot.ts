/** From a container of lye to a row of `LyeLots`: read, plan, agree, write, read back. */
import type { Host } from "../../../sheet/port";
import type { LyeLotRecord } from "../../record/lye-lot-record";
import { lyeLotsTable } from "../../tables/lye-lots";
import type { Confirmed, Plan, RecordOutcome, Refusal } from "../plan";
import { planRecord, recordRow } from "./plan-record";
import type { Pause } from "../settle";
import type { RowChoice } from "./target-row";

/** What keeping it would do. Reads, never writes. */
export const planLyeLot = (
  host: Host,
  record: LyeLotRecord,
  choice?: RowChoice,
): Promise<Plan | Refusal> => planRecord(host, lyeLotsTable, record, choice);

/** Plans anew and writes only what was agreed to. */
export const recordLyeLot = (
  host: Host,
  record: LyeLotRecord,
  confirmed: Confirmed | undefined,
  pause?: Pause,
  choice?: RowChoice,
): Promise<RecordOutcome> =>
  recordRow(host, lyeLotsTable, record, {
    label: `Keep lye lot ${record.lot}`,
    confirmed,
    pause,
    choice,
  });
