/** From a bench record to a row in the workbook: read, plan, agree, write, read back. */
import type { Host } from "../../host/port";
import type { TitrationRecord } from "../record/titration-record";
import type { Confirmed, Plan, RecordOutcome, Refusal } from "./plan";

/** What recording would do. Reads, never writes. */
export declare function planTitration(host: Host, record: TitrationRecord): Promise<Plan | Refusal>;

/** Plans anew and writes only what was agreed to. */
export declare function recordTitration(
  host: Host,
  record: TitrationRecord,
  confirmed: Confirmed | undefined,
): Promise<RecordOutcome>;
