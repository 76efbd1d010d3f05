/** From a titrant made or checked to a row of `Titrants`: read, plan, agree, write, read back. */
import type { Host } from "../../../sheet/port";
import type { TitrantRecord } from "../../record/titrant-record";
import { titrants } from "../../tables/titrants";
import type { Confirmed, Plan, RecordOutcome, Refusal } from "../plan";
import { planRecord, recordRow } from "./plan-record";
import type { Pause } from "../settle";
import type { RowChoice } from "./target-row";

/** What recording would do. Reads, never writes. */
export const planTitrant = (
  host: Host,
  record: TitrantRecord,
  choice?: RowChoice,
): Promise<Plan | Refusal> => planRecord(host, titrants, record, choice);

/** Plans anew and writes only what was agreed to. `pause` lets slow functions answer. */
export const recordTitrant = (
  host: Host,
  record: TitrantRecord,
  confirmed: Confirmed | undefined,
  pause?: Pause,
  choice?: RowChoice,
): Promise<RecordOutcome> =>
  recordRow(host, titrants, record, {
    label: `Record titrant ${record.titrant}`.trim(),
    confirmed,
    pause,
    choice,
  });
