/** Everything that can happen to a titration under way. Pure: a draft and an action give a draft. */
import { enter, type EnterAction } from "../stepped/entered";
import { type TakenTitrant, withoutCheck, withTitrant } from "./titrants/take-titrant";
import { type Draft, type Habits, mostReadings, type Reading, type ReadingList } from "./draft";
import { isOfCurve } from "./probe-put";
import { entryNames } from "./readings";
import type { titration } from "./titration";

export type Action =
  | EnterAction<typeof titration>
  /** The number in the field means this unit: carried over from the other one. */
  | { readonly do: "answer-tenth"; readonly meant: "molarity" | "percent" }
  /** Not by the person: it holds for this titration, and theirs comes back for the next. */
  | { readonly do: "pick-once"; readonly picked: Habits }
  | { readonly do: "take-titrant"; readonly taken: TakenTitrant }
  | { readonly do: "add"; readonly list: ReadingList; readonly reading: Reading }
  | {
      readonly do: "change";
      readonly list: ReadingList;
      readonly index: number;
      readonly reading: Reading;
    }
  /** Take a reading into the entry fields, to be changed there. */
  | { readonly do: "edit"; readonly list: ReadingList; readonly index: number }
  /** Leave the reading as it was. */
  | { readonly do: "clear-entry"; readonly list: ReadingList }
  | { readonly do: "remove-blank"; readonly index: number }
  | { readonly do: "omit"; readonly index: number; readonly reason: string }
  | { readonly do: "put-back"; readonly index: number }
  /** The dose is wanted although the result is not to be used yet, for this reason. */
  | { readonly do: "use-all-the-same"; readonly why: string }
  | { readonly do: "recorded" };

const replaced = (
  readings: readonly Reading[],
  index: number,
  change: (reading: Reading) => Reading,
): readonly Reading[] =>
  readings.map((reading, each) => (each === index ? change(reading) : reading));

const withoutReason = ({ used, start, end, mass, isByProbe }: Reading): Reading => ({
  used,
  ...(start === undefined || end === undefined ? {} : { start, end }),
  ...(mass === undefined ? {} : { mass }),
  ...(isByProbe === undefined ? {} : { isByProbe }),
});

const isOfEntry = (field: string, list: ReadingList): boolean =>
  Object.values<string>(entryNames[list]).includes(field) ||
  (list === "titres" && field === "ownMass");

const withoutEntry = (typed: Draft["typed"], list: ReadingList): Draft["typed"] =>
  Object.fromEntries(Object.entries(typed).filter(([id]) => !isOfEntry(id, list)));

/** After a reading the fields are empty again; the next one starts where this one ended. */
const nextEntry = (
  { typed }: Draft,
  list: ReadingList,
  latest: Reading | undefined,
): Draft["typed"] => ({
  ...withoutEntry(typed, list),
  ...(latest?.end === undefined ? {} : { [entryNames[list].start]: latest.end }),
});

const pickedOnce = (draft: Draft, picked: Habits): Draft => {
  const { reading, indicator } = { ...draft.picked, ...draft.habits };
  const theirs: Habits = {
    ...("reading" in picked ? { reading } : {}),
    ...("indicator" in picked ? { indicator } : {}),
  };
  return {
    ...draft,
    habits: { ...draft.habits, ...theirs },
    picked: { ...draft.picked, ...picked },
  };
};

/** A reading back in the entry fields. */
const inEntry = (draft: Draft, list: ReadingList, reading: Reading): Draft => {
  const { used, start, end, mass } = reading;
  const names = entryNames[list];
  const hasScale = start !== undefined && end !== undefined;
  return {
    ...pickedOnce(draft, { reading: hasScale ? "start and end" : "used" }),
    typed: {
      ...withoutEntry(draft.typed, list),
      ...(hasScale ? { [names.start]: start, [names.end]: end } : { [names.used]: used }),
      ...(mass === undefined ? {} : { ownMass: mass }),
    },
  };
};

/** What was recorded is the draft as it was then: a change makes it a titration not yet recorded. */
export function reduce(draft: Draft, action: Action): Draft {
  const next = reduced(draft, action);
  const stays = next === draft || action.do === "go" || action.do === "recorded";
  return stays || !next.isRecorded ? next : { ...next, isRecorded: false };
}

function reduced(draft: Draft, action: Action): Draft {
  switch (action.do) {
    case "type": {
      // Another number is another question: the answer given for 0.1 does not hold for it.
      const isStrength = action.field === "molarity" || action.field === "percent";
      return enter(
        isStrength ? { ...draft, picked: { ...draft.picked, oneTenth: "" } } : draft,
        action,
      );
    }
    case "pick": {
      const { way = draft.picked.way } = action.picked;
      const isLeft = draft.picked.way === "kept" && way !== "kept";
      const habits = Object.fromEntries(
        Object.entries(draft.habits).filter(([id]) => !(id in action.picked)),
      );
      return enter({ ...(isLeft ? withoutCheck(draft) : draft), habits }, action);
    }
    case "write":
    case "begin-with":
    case "go":
      return enter(draft, action);
    case "answer-tenth": {
      const from = draft.picked.way === "percent" ? "percent" : "molarity";
      const text = draft.typed[from] ?? "";
      return {
        ...draft,
        picked: { ...draft.picked, way: action.meant, oneTenth: action.meant },
        typed: { ...draft.typed, [from]: "", [action.meant]: text },
      };
    }
    case "pick-once":
      return pickedOnce(draft, action.picked);
    case "take-titrant":
      return withTitrant(draft, action.taken);
    case "add": {
      const readings = draft[action.list];
      if (readings.length >= mostReadings[action.list]) return draft;
      return {
        ...draft,
        [action.list]: [
          ...readings,
          isOfCurve(draft, action.list) ? { ...action.reading, isByProbe: true } : action.reading,
        ],
        typed: nextEntry(draft, action.list, action.reading),
        ...(action.list === "blanks" ? { blanksOf: "" } : {}),
      };
    }
    case "edit": {
      const reading = draft[action.list][action.index];
      return reading === undefined ? draft : inEntry(draft, action.list, reading);
    }
    case "change":
      return {
        ...draft,
        [action.list]: replaced(draft[action.list], action.index, (was) => ({
          ...action.reading,
          ...(was.omitted === undefined ? {} : { omitted: was.omitted }),
        })),
        typed: nextEntry(
          draft,
          action.list,
          action.index === draft[action.list].length - 1
            ? action.reading
            : draft[action.list].at(-1),
        ),
      };
    case "clear-entry":
      return { ...draft, typed: nextEntry(draft, action.list, draft[action.list].at(-1)) };
    case "remove-blank":
      return { ...draft, blanks: draft.blanks.filter((_, each) => each !== action.index) };
    case "omit":
      return {
        ...draft,
        titres: replaced(draft.titres, action.index, (reading) => ({
          ...reading,
          omitted: action.reason,
        })),
      };
    case "put-back":
      return { ...draft, titres: replaced(draft.titres, action.index, withoutReason) };
    case "use-all-the-same":
      return { ...draft, usedAllTheSame: action.why };
    case "recorded":
      return { ...draft, isRecorded: true };
  }
}
