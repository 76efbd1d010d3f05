/** From a bench record to a row in the workbook: read, plan, agree, write, read back. */
import { type Host, isFault } from "../../host/port";
import { rowValues } from "../record/row-values";
import type { TitrationRecord } from "../record/titration-record";
import { titrations } from "../tables/titrations";
import { asked } from "./asked";
import type { Confirmed, Plan, RecordOutcome, Refusal } from "./plan";
import { planRow } from "./plan-row";
import { planTable } from "./plan-table";
import { readBack } from "./read-back";
import { readLogbook } from "./read-logbook";
import { refusal } from "./refusal";
import type { Pause } from "./settle";

/** What recording would do. Reads, never writes. */
export async function planTitration(host: Host, record: TitrationRecord): Promise<Plan | Refusal> {
  const snapshot = await readLogbook(host, titrations.name);
  if (isFault(snapshot)) return refusal(snapshot);
  const values = rowValues(record);
  return snapshot.logbook
    ? planRow(snapshot, snapshot.logbook, values)
    : planTable(snapshot, values);
}

/** Why a plan may not be carried out yet; undefined when all of it was agreed to. */
function notAgreed(plan: Plan, confirmed: Confirmed | undefined): string | undefined {
  if (!confirmed) return "Nothing is written yet: look at what would be.";
  if (confirmed.fingerprint !== plan.fingerprint) {
    return "The workbook has changed since this was shown. Nothing was written: look again.";
  }
  const open = plan.mustConfirm.filter((each) => !confirmed.agreed.includes(each));
  if (open.length === 0) return undefined;
  const sentence = plan.remarks.find(({ confirm }) => confirm === open[0])?.sentence;
  return `To be confirmed first: ${sentence ?? open[0] ?? ""}`;
}

/** Plans anew and writes only what was agreed to. `pause` lets slow functions answer. */
export async function recordTitration(
  host: Host,
  record: TitrationRecord,
  confirmed: Confirmed | undefined,
  pause?: Pause,
): Promise<RecordOutcome> {
  const plan = await planTitration(host, record);
  if (plan.kind === "refused") return plan;
  const sentence = notAgreed(plan, confirmed);
  if (sentence !== undefined) return { kind: "to-confirm", plan, sentence };
  const done = await asked(() => host.write(`Record titration of ${record.lot}`, plan.steps));
  if (isFault(done) && done.code !== "no-answer") return refusal(done);
  return readBack(host, plan, done, pause);
}
