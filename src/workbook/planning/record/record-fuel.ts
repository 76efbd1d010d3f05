/** From what was found in a fuel to a row of `Fuel`: read, plan, agree, write, read back. */
import type { Host } from "../../../sheet/port";
import type { FuelRecord } from "../../record/fuel-record";
import { fuel } from "../../tables/fuel";
import type { Confirmed, Plan, RecordOutcome, Refusal } from "../plan";
import { planRecord, recordRow } from "./plan-record";
import type { Pause } from "../settle";
import type { RowChoice } from "./target-row";

/** What recording would do. Reads, never writes. */
export const planFuel = (
  host: Host,
  record: FuelRecord,
  choice?: RowChoice,
): Promise<Plan | Refusal> => planRecord(host, fuel, record, choice);

/** Plans anew and writes only what was agreed to. `pause` lets slow functions answer. */
export const recordFuel = (
  host: Host,
  record: FuelRecord,
  confirmed: Confirmed | undefined,
  pause?: Pause,
  choice?: RowChoice,
): Promise<RecordOutcome> =>
  recordRow(host, fuel, record, {
    label: `Record fuel of ${String(record.batch)}`,
    confirmed,
    pause,
    choice,
  });
