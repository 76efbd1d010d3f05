/** From a bench record to a row in the workbook: read, plan, agree, write, read back. */
import type { Host } from "../../../sheet/port";
import { rowValues } from "../../record/row-values";
import type { TitrationRecord } from "../../record/titration-record";
import { titrations } from "../../tables/titrations";
import type { Confirmed, Plan, RecordOutcome, Refusal } from "../plan";
import { planRecord, recordRow } from "./plan-record";
import type { RecordTarget } from "./record-target";
import type { Pause } from "../settle";
import type { RowChoice } from "./target-row";

const into: RecordTarget = {
  shape: titrations,
  what: "titration",
  essential: ["Lot", "Titre 1 mL"],
  telling: [
    "Date",
    "Lot",
    ...[1, 2, 3, 4, 5, 6].map((place) => `Titre ${String(place)} mL`),
    ...[1, 2, 3].map((place) => `Blank ${String(place)} mL`),
  ],
  tellingWords: "same date, same lot, same readings",
};

/** What recording would do. Reads, never writes. */
export const planTitration = (
  host: Host,
  record: TitrationRecord,
  choice?: RowChoice,
): Promise<Plan | Refusal> => planRecord(host, into, rowValues(record), choice);

/** Plans anew and writes only what was agreed to. `pause` lets slow functions answer. */
export const recordTitration = (
  host: Host,
  record: TitrationRecord,
  confirmed: Confirmed | undefined,
  pause?: Pause,
  choice?: RowChoice,
): Promise<RecordOutcome> =>
  recordRow(host, into, rowValues(record), {
    label: `Record titration of ${record.lot}`,
    confirmed,
    pause,
    choice,
  });
