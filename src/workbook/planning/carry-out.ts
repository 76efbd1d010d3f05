/** Any planned change: planned anew, held against what was agreed to, written once, read back. */
import { type Host, isFault } from "../../sheet/port";
import { asked } from "./asked";
import type { Confirmed, Plan, RecordOutcome, Refusal } from "./plan";
import { readBack } from "./read-back";
import { refusal } from "./refusal";
import type { Pause } from "./settle";

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

/**
 * @param label what the one undo step is called
 * @param pause lets slow functions answer
 */
export async function carryOut(
  host: Host,
  label: string,
  planned: () => Promise<Plan | Refusal>,
  confirmed: Confirmed | undefined,
  pause?: Pause,
): Promise<RecordOutcome> {
  const plan = await planned();
  if (plan.kind === "refused") return plan;
  const sentence = notAgreed(plan, confirmed);
  if (sentence !== undefined) return { kind: "to-confirm", plan, sentence };
  const done = await asked(() => host.write(label, plan.steps));
  if (isFault(done)) {
    return done.code === "no-answer"
      ? readBack(host, plan, { unanswered: done }, pause)
      : refusal(done);
  }
  return readBack(host, plan, done ? { shortfall: done } : {}, pause);
}
