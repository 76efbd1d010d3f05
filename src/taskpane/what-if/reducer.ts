/** Everything that can happen to a what-if table under way. Pure: a draft and an action give a draft. */
import type { Base } from "../../core/reference/bases";
import { enter, type EnterAction } from "../stepped/entered";
import type { Draft } from "./draft";
import type { ListId } from "./fields";
import type { whatIf } from "./what-if";

export type Action =
  | EnterAction<typeof whatIf>
  | { readonly do: "list"; readonly list: ListId; readonly text: string }
  | { readonly do: "choose-lot"; readonly lot: string; readonly isChosen: boolean }
  | { readonly do: "one-lot"; readonly lot: string }
  | { readonly do: "choose-base"; readonly base: Base["name"]; readonly isChosen: boolean }
  | { readonly do: "use-all-the-same"; readonly why: string; readonly isUsed: boolean }
  /** One more figure at the end of a list. */
  | { readonly do: "append"; readonly list: ListId; readonly text: string };

const withOrWithout = <T>(all: readonly T[], one: T, isChosen: boolean): readonly T[] => {
  if (all.includes(one) === isChosen) return all;
  return isChosen ? [...all, one] : all.filter((each) => each !== one);
};

export function reduce(draft: Draft, action: Action): Draft {
  switch (action.do) {
    case "type":
    case "pick":
    case "write":
    case "begin-with":
    case "go":
      return enter(draft, action);
    case "list":
      return { ...draft, lists: { ...draft.lists, [action.list]: action.text } };
    case "append": {
      const text = `${draft.lists[action.list].trim()} ${action.text}`.trim();
      return { ...draft, lists: { ...draft.lists, [action.list]: text } };
    }
    case "choose-lot":
      return { ...draft, lots: withOrWithout(draft.lots, action.lot, action.isChosen) };
    case "one-lot":
      return { ...draft, lot: action.lot };
    case "use-all-the-same": {
      const usedAllTheSame = withOrWithout(draft.usedAllTheSame, action.why, action.isUsed);
      return { ...draft, usedAllTheSame };
    }
    case "choose-base":
      return { ...draft, bases: withOrWithout(draft.bases, action.base, action.isChosen) };
  }
}
