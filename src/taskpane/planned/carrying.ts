/** A planned change, as the pane goes through it: shown, agreed to, carried out, reported. */
import type { Confirmed, Plan, RecordOutcome, Refusal } from "../../workbook/planning/plan";

export type Carrying =
  | { readonly state: "looking" }
  | { readonly state: "planned"; readonly plan: Plan; readonly sentence: string | undefined }
  | {
      readonly state: "refused";
      readonly sentence: string;
      /** The row is occupied, and there is a free one. */
      readonly hasNextFree: boolean;
    }
  | { readonly state: "writing"; readonly plan: Plan }
  | {
      readonly state: "written";
      readonly sentence: string;
      readonly differences: readonly string[];
      readonly isOneUndo: boolean;
      /** All of it is there and worked out. */
      readonly isWell: boolean;
    }
  /** Written or not, nobody knows: what was typed stays. */
  | { readonly state: "not known"; readonly sentence: string };

export const looking: Carrying = { state: "looking" };

export const refusedWith = (sentence: string, hasNextFree = false): Carrying => ({
  state: "refused",
  sentence,
  hasNextFree,
});

export const afterPlan = (found: Plan | Refusal): Carrying =>
  found.kind === "refused"
    ? refusedWith(found.sentence, found.hasNextFree)
    : { state: "planned", plan: found, sentence: undefined };

export function afterWriting(outcome: RecordOutcome): Carrying {
  switch (outcome.kind) {
    case "recorded":
      return {
        state: "written",
        sentence: outcome.sentence,
        differences: [
          ...outcome.differences.map(({ sentence }) => sentence),
          ...outcome.troubles,
          ...outcome.asides,
        ],
        isOneUndo: outcome.isOneUndo,
        isWell: outcome.differences.length === 0 && outcome.troubles.length === 0,
      };
    case "to-confirm":
      return { state: "planned", plan: outcome.plan, sentence: outcome.sentence };
    case "refused":
      return refusedWith(outcome.sentence, outcome.hasNextFree);
    case "not-known":
      return { state: "not known", sentence: outcome.sentence };
  }
}

/**
 * Something was typed after `shown` was planned, and then it was pressed: does what is planned now need
 * to be seen first? Not when it goes to the same place and asks for nothing that was not agreed to.
 */
export const mayGoOn = (shown: Plan, now: Plan, agreed: readonly string[]): boolean =>
  now.where === shown.where && now.table === shown.table && isAgreed(now, agreed);

/** May this plan be carried out: was all of it agreed to that had to be? */
export const isAgreed = (plan: Plan, agreed: readonly string[]): boolean =>
  plan.mustConfirm.every((each) => agreed.includes(each));

export const confirmedOf = (plan: Plan, agreed: readonly string[]): Confirmed => ({
  fingerprint: plan.fingerprint,
  agreed: plan.mustConfirm.filter((each) => agreed.includes(each)),
});
