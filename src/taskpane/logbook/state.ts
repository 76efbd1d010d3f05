/** What the logbook task knows and how it changes. No page, no workbook. */
import type { AddedId } from "../../adopt/added-columns/added";
import type { Spelling } from "../../adopt/added-columns/columns-to-add";
import { type LogbookMapping, withConstant } from "../../adopt/recognising/mapping";
import { type FoundTable, foundTable, type ReadTable } from "./found-table";
import { readFrom, withOther } from "./read-by-hand";
import { readAfresh } from "./learned";
import { refreshed } from "./refreshed";
import { agreedWith } from "./same-headings";
import { changed, type MappingAction } from "./mapping-actions";
import type { RoleId } from "../../adopt/recognising/roles";
import type { RecheckReport } from "../../adopt/recheck/reporting/finding";

/** In their order. */
export const stepNames = {
  recognise: "Check columns",
  add: "Add columns",
  check: "Re-check",
} as const;
export type StepId = keyof typeof stepNames;

export type Looking =
  | { readonly state: "looking" }
  | { readonly state: "found" }
  | { readonly state: "failed"; readonly sentence: string };

export type Check =
  | { readonly state: "not yet" }
  | { readonly state: "running"; readonly done: number; readonly of: number }
  | { readonly state: "stopped" }
  /** Something unexpected ended it. */
  | { readonly state: "broken off" }
  | { readonly state: "done"; readonly report: RecheckReport };

export interface LogbookState {
  readonly step: StepId;
  readonly looking: Looking;
  readonly tables: readonly FoundTable[];
  /** What else stands on the sheets: taken for a logbook when a person says so. */
  readonly others: readonly ReadTable[];
  /** Which of them is shown. */
  readonly at: number;
  readonly spelling: Spelling;
  readonly picked: readonly AddedId[];
  readonly check: Check;
}

export const firstState: LogbookState = {
  step: "recognise",
  looking: { state: "looking" },
  tables: [],
  others: [],
  at: 0,
  spelling: "functions",
  picked: [],
  check: { state: "not yet" },
};

interface Read {
  readonly tables: readonly ReadTable[];
  readonly others?: readonly ReadTable[];
}

export type Action =
  | { readonly do: "look" }
  | ({ readonly do: "found" } & Read)
  /** Read again, with what was agreed kept where the headings are as they were. */
  | ({ readonly do: "refreshed" } & Read)
  | { readonly do: "failed"; readonly sentence: string }
  | { readonly do: "go"; readonly step: StepId }
  | { readonly do: "show"; readonly at: number }
  /** One of the others is a logbook after all. */
  | { readonly do: "take"; readonly other: number }
  /** The headings stand in another row, counted from 0. */
  | { readonly do: "headings"; readonly row: number }
  | MappingAction
  /** A figure that only the new columns need: what was agreed still holds. */
  | { readonly do: "step"; readonly role: RoleId; readonly value: string }
  /** What was learned of another workbook does not hold here. */
  | { readonly do: "afresh" }
  | { readonly do: "agree" }
  | { readonly do: "spell"; readonly spelling: Spelling }
  | { readonly do: "pick"; readonly id: AddedId; readonly isPicked: boolean }
  | { readonly do: "checking"; readonly done: number; readonly of: number }
  | { readonly do: "checked"; readonly report: RecheckReport }
  | { readonly do: "stopped" }
  | { readonly do: "broke-off" };

/** A change to the mapping that is shown: what was agreed and found before no longer holds. */
function remapped(
  state: LogbookState,
  how: (mapping: LogbookMapping) => LogbookMapping,
): LogbookState {
  const tables = state.tables.map((table, at) =>
    at === state.at
      ? { ...table, mapping: how(table.mapping), isAgreed: false, isRemembered: false }
      : table,
  );
  return { ...state, tables, check: { state: "not yet" } };
}

export function reduce(state: LogbookState, action: Action): LogbookState {
  switch (action.do) {
    case "look":
      return { ...state, looking: { state: "looking" }, check: { state: "not yet" } };
    case "found":
      return {
        ...state,
        looking: { state: "found" },
        tables: action.tables.map(foundTable),
        others: action.others ?? [],
        at: 0,
      };
    case "refreshed":
      return {
        ...state,
        tables: refreshed(state.tables, [...action.tables, ...(action.others ?? [])]),
      };
    case "failed":
      return { ...state, looking: { state: "failed", sentence: action.sentence } };
    case "go":
      return { ...state, step: action.step };
    case "show":
      return { ...state, at: action.at };
    case "take":
      return {
        ...state,
        ...withOther(state.tables, state.others, action.other),
        check: { state: "not yet" },
      };
    case "headings":
      return {
        ...state,
        tables: state.tables.map((table, at) =>
          at === state.at ? readFrom(table, action.row) : table,
        ),
        check: { state: "not yet" },
      };
    case "column":
    case "constant":
    case "typed":
    case "unit":
    case "basis":
    case "answer":
    case "leave":
    case "dates":
      return remapped(state, (mapping) => changed(mapping, action));
    case "step":
      return {
        ...state,
        tables: state.tables.map((table, at) =>
          at === state.at
            ? { ...table, mapping: withConstant(table.mapping, action.role, action.value) }
            : table,
        ),
      };
    case "afresh":
      return {
        ...state,
        tables: state.tables.map((table, at) => (at === state.at ? readAfresh(table) : table)),
        check: { state: "not yet" },
      };
    case "agree":
      return { ...state, tables: agreedWith(state.tables, state.at) };
    case "spell":
      return { ...state, spelling: action.spelling };
    case "pick": {
      const others = state.picked.filter((each) => each !== action.id);
      return { ...state, picked: action.isPicked ? [...others, action.id] : others };
    }
    case "checking":
      return { ...state, check: { state: "running", done: action.done, of: action.of } };
    case "checked":
      return { ...state, check: { state: "done", report: action.report } };
    case "stopped":
      return { ...state, check: { state: "stopped" } };
    case "broke-off":
      return { ...state, check: { state: "broken off" } };
  }
}

export const shownTable = ({ tables, at }: LogbookState): FoundTable | undefined => tables[at];
export const agreedTables = ({ tables }: LogbookState): readonly FoundTable[] =>
  tables.filter(({ isAgreed }) => isAgreed);
