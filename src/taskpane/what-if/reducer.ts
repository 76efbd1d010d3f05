/** Everything that can happen to a what-if table under way. Pure: a draft and an action give a draft. */
import type { Base } from "../../core/reference/bases";
import type { Draft, ListId, Picked, StepId } from "./draft";
import type { NumberFieldId } from "./fields";

export type Action =
  | { readonly do: "type"; readonly field: NumberFieldId; readonly text: string }
  | { readonly do: "list"; readonly list: ListId; readonly text: string }
  | { readonly do: "pick"; readonly picked: Partial<Picked> }
  | { readonly do: "choose-lot"; readonly lot: string; readonly isChosen: boolean }
  | { readonly do: "one-lot"; readonly lot: string }
  | { readonly do: "choose-base"; readonly base: Base["name"]; readonly isChosen: boolean }
  /** One more figure at the end of a list. */
  | { readonly do: "append"; readonly list: ListId; readonly text: string }
  | { readonly do: "go"; readonly step: StepId };

const withOrWithout = <T>(all: readonly T[], one: T, isChosen: boolean): readonly T[] => {
  if (all.includes(one) === isChosen) return all;
  return isChosen ? [...all, one] : all.filter((each) => each !== one);
};

export function reduce(draft: Draft, action: Action): Draft {
  switch (action.do) {
    case "type":
      return { ...draft, typed: { ...draft.typed, [action.field]: action.text } };
    case "list":
      return { ...draft, lists: { ...draft.lists, [action.list]: action.text } };
    case "append": {
      const text = `${draft.lists[action.list].trim()} ${action.text}`.trim();
      return { ...draft, lists: { ...draft.lists, [action.list]: text } };
    }
    case "pick":
      return { ...draft, picked: { ...draft.picked, ...action.picked } };
    case "choose-lot":
      return { ...draft, lots: withOrWithout(draft.lots, action.lot, action.isChosen) };
    case "one-lot":
      return { ...draft, lot: action.lot };
    case "choose-base":
      return { ...draft, bases: withOrWithout(draft.bases, action.base, action.isChosen) };
    case "go":
      return { ...draft, step: action.step };
  }
}
