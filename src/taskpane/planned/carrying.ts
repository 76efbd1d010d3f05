/** A planned change, as the pane goes through it: shown, agreed to, carried out, reported. */
import type { Confirmed, Plan, RecordOutcome, Refusal } from "../../workbook/planning/plan";

export type Carrying =
  | { readonly state: "looking" }
  | { readonly state: "planned"; readonly plan: Plan; readonly sentence: string | undefined }
  | { readonly state: "refused"; readonly sentence: string }
  | { readonly state: "writing"; readonly plan: Plan }
  | {
      readonly state: "written";
      readonly sentence: string;
      readonly differences: readonly string[];
    }
  /** Written or not, nobody knows: what was typed stays. */
  | { readonly state: "not known"; readonly sentence: string };

export const looking: Carrying = { state: "looking" };

export const afterPlan = (found: Plan | Refusal): Carrying =>
  found.kind === "refused"
    ? { state: "refused", sentence: found.sentence }
    : { state: "planned", plan: found, sentence: undefined };

export function afterWriting(outcome: RecordOutcome): Carrying {
  switch (outcome.kind) {
    case "recorded":
      return {
        state: "written",
        sentence: outcome.sentence,
        differences: outcome.differences.map(({ sentence }) => sentence),
      };
    case "to-confirm":
      return { state: "planned", plan: outcome.plan, sentence: outcome.sentence };
    case "refused":
      return { state: "refused", sentence: outcome.sentence };
    case "not-known":
      return { state: "not known", sentence: outcome.sentence };
  }
}

/** May this plan be carried out: was all of it agreed to that had to be? */
export const isAgreed = (plan: Plan, agreed: readonly string[]): boolean =>
  plan.mustConfirm.every((each) => agreed.includes(each));

export const confirmedOf = (plan: Plan, agreed: readonly string[]): Confirmed => ({
  fingerprint: plan.fingerprint,
  agreed: plan.mustConfirm.filter((each) => agreed.includes(each)),
});
