/** Everything that can happen to a batch under way. Pure: a draft and an action give a draft. */
import type { PublishedCharge } from "../../core/reference/base-charges";
import { enter, type EnterAction } from "../stepped/entered";
import type { batch } from "./batch";
import { type ChosenLot, type Draft, mostLots } from "./draft";

export type Action =
  | EnterAction<typeof batch>
  | { readonly do: "choose-lot"; readonly lot: string; readonly isChosen: boolean }
  | { readonly do: "share"; readonly lot: string; readonly text: string }
  /** Lots in their order, each with its share as typed; the last takes what the others leave. */
  | { readonly do: "mix"; readonly lots: readonly ChosenLot[] }
  /** A published level into the fields, as pure base. */
  | { readonly do: "take-charge"; readonly charge: PublishedCharge }
  /** The dose is wanted although the acid is not to be used yet, for this reason. */
  | { readonly do: "use-all-the-same"; readonly why: string }
  | { readonly do: "recorded" };

/** What was recorded is the draft as it was then: a change makes it a batch not yet recorded. */
export function reduce(draft: Draft, action: Action): Draft {
  const next = reduced(draft, action);
  const stays = next === draft || action.do === "go" || action.do === "recorded";
  return stays || !next.isRecorded ? next : { ...next, isRecorded: false };
}

function chosen(draft: Draft, lot: string, isChosen: boolean): Draft {
  const isThere = draft.lots.some((each) => each.lot === lot);
  if (isThere === isChosen) return draft;
  if (!isChosen) return { ...draft, lots: draft.lots.filter((each) => each.lot !== lot) };
  return draft.lots.length >= mostLots
    ? draft
    : { ...draft, lots: [...draft.lots, { lot, share: "" }] };
}

/** A figure in the mark of its field: typed digits with a point are read wherever one lives. */
const chargeField = { "%": "chargePercent", "g/L": "chargeGrams" } as const;

const ofLye = ["assay", "chargePercent", "chargeGrams"];

const withoutLye = (typed: Draft["typed"]): Draft["typed"] =>
  Object.fromEntries(Object.entries(typed).filter(([field]) => !ofLye.includes(field)));

function reduced(draft: Draft, action: Action): Draft {
  switch (action.do) {
    case "type":
    case "write":
    case "begin-with":
    case "go":
      return enter(draft, action);
    case "pick": {
      const next = enter(draft, action);
      // Assay and charge are one base's: under another they must be said anew.
      const isOther = next.picked.base !== draft.picked.base;
      return isOther
        ? {
            ...next,
            picked: { ...next.picked, chargeIs: "" },
            typed: withoutLye(next.typed),
            words: { ...next.words, lyeLot: "" },
          }
        : next;
    }
    case "choose-lot":
      return chosen(draft, action.lot, action.isChosen);
    case "share":
      return {
        ...draft,
        lots: draft.lots.map((each) =>
          each.lot === action.lot ? { ...each, share: action.text } : each,
        ),
      };
    case "mix":
      return { ...draft, lots: action.lots, picked: { ...draft.picked, mixedBy: "shares" } };
    case "take-charge": {
      const { amount, unit } = action.charge;
      return {
        ...draft,
        picked: { ...draft.picked, chargeUnit: unit, chargeIs: "pure" },
        typed: { ...draft.typed, [chargeField[unit]]: amount },
      };
    }
    case "use-all-the-same":
      return { ...draft, usedAllTheSame: action.why };
    case "recorded":
      return { ...draft, isRecorded: true };
  }
}
