/** Recording, as the pane goes through it: the plan is shown, agreed to, carried out, reported. */
import type { Confirmed, Plan, RecordOutcome, Refusal } from "../../workbook/planning/plan";

import { digits } from "./shown";

export type Recording =
  | { readonly state: "looking" }
  | { readonly state: "planned"; readonly plan: Plan; readonly sentence: string | undefined }
  | { readonly state: "refused"; readonly sentence: string }
  | { readonly state: "writing"; readonly plan: Plan }
  | {
      readonly state: "recorded";
      readonly sentence: string;
      readonly differences: readonly string[];
    }
  /** Written or not, nobody knows: the draft stays. */
  | { readonly state: "not known"; readonly sentence: string };

export const looking: Recording = { state: "looking" };

export const afterPlan = (found: Plan | Refusal): Recording =>
  found.kind === "refused"
    ? { state: "refused", sentence: found.sentence }
    : { state: "planned", plan: found, sentence: undefined };

export function afterRecord(outcome: RecordOutcome): Recording {
  switch (outcome.kind) {
    case "recorded":
      return {
        state: "recorded",
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

/** Two doubles of one figure, but for the last digit. */
const isSame = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-14 * Math.abs(b);

/**
 * Does the row's own formula give the % FFA that the pane shows?
 * @returns a sentence when it does not; a row that could not be read back says nothing
 */
export function atOdds(outcome: RecordOutcome, ffa: number): string | undefined {
  const found = outcome.kind === "recorded" ? outcome.results["FFA %"] : undefined;
  if (typeof found !== "number" || isSame(found, ffa)) return undefined;
  return `The row shows ${digits(found, 6)} % FFA and the pane ${digits(ffa, 6)} %: look for a changed formula or cell in it.`;
}

/** May this plan be carried out: was all of it agreed to that had to be? */
export const isAgreed = (plan: Plan, agreed: readonly string[]): boolean =>
  plan.mustConfirm.every((each) => agreed.includes(each));

export const confirmedOf = (plan: Plan, agreed: readonly string[]): Confirmed => ({
  fingerprint: plan.fingerprint,
  agreed: plan.mustConfirm.filter((each) => agreed.includes(each)),
});
