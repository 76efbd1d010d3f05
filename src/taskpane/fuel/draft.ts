/** A fuel under way, as typed and picked: what was read at the bench, never what follows from it. */
import { isObject } from "../drafts/believed";
import {
  enter,
  type EnterAction,
  type Entered,
  firstEntered,
  storedEntered,
} from "../stepped/entered";
import type { NumberFieldFact } from "../widgets/judged";
import type { NumberFieldId } from "./fields";
import { fuel } from "./fuel";

export interface Draft extends Entered<typeof fuel> {
  readonly version: 1;
  /** It stands in the workbook. */
  readonly isRecorded: boolean;
}

export type Action = EnterAction<typeof fuel> | { readonly do: "recorded" };

/** A fresh fuel. After another it keeps burettes, balance and titrants. */
export const newDraft = (after?: Draft): Draft => ({
  version: 1,
  ...firstEntered(fuel, after),
  isRecorded: false,
});

/** What was recorded is the draft as it was then: a change makes it one not yet recorded. */
export function reduce(draft: Draft, action: Action): Draft {
  if (action.do === "recorded") return { ...draft, isRecorded: true };
  const isOwnTrial = action.do === "pick" && "trial" in action.picked;
  const entered = enter(draft, action);
  const next = isOwnTrial ? { ...entered, words: { ...entered.words, trialFrom: "" } } : entered;
  return action.do === "go" ? next : { ...next, isRecorded: false };
}

/** Something was measured, picked or noted that stands in no row yet. */
export const isUnderWay = ({ typed, picked, words, isRecorded }: Draft): boolean =>
  !isRecorded &&
  (picked.washed !== "" ||
    picked.trial !== "" ||
    words.note.trim() !== "" ||
    (Object.keys(fuel.fields) as NumberFieldId[]).some(
      (field) => !isKept(fuel.fields[field]) && (typed[field] ?? "") !== "",
    ));

const isKept = (fact: NumberFieldFact): boolean => fact.isKept === true;

/** Out of storage, believed part by part. */
export const draftFrom = (value: unknown): Draft =>
  isObject(value) && value.version === 1
    ? { version: 1, ...storedEntered(fuel, value), isRecorded: value.isRecorded === true }
    : newDraft();
