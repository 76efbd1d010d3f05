/** Drafts of a what-if table for tests, filled in as a person would. */
import type { RecordedLot } from "../../../src/workbook/planning/read-lots";
import { type Draft, newDraft } from "../../../src/taskpane/what-if/draft";
import { type Action, reduce } from "../../../src/taskpane/what-if/reducer";
import { type View, viewOf } from "../../../src/taskpane/what-if/view-of";
import type { DecimalMark } from "../../../src/taskpane/widgets/typed-number";

export const after = (...actions: readonly Action[]): Draft => actions.reduce(reduce, newDraft());

/** Two sizes by two acid values. */
export const filled: readonly Action[] = [
  { do: "list", list: "sizes", text: "100 200" },
  { do: "list", list: "acid", text: "2 5" },
  { do: "type", field: "assay", text: "90" },
  { do: "type", field: "charge", text: "0.765" },
];

export const lot = (mark: string | number, acidValue: number | undefined): RecordedLot => ({
  lot: mark,
  stage: "as received",
  oil: "used cooking oil",
  titrantBase: "KOH",
  acidValue,
  ffa: acidValue === undefined ? undefined : (acidValue * 282) / 561,
  halfWidth: undefined,
  shared: 0,
  worth: undefined,
  trouble: acidValue === undefined ? "#N/A" : "",
  isAsIfPure: false,
});

export const seen = (draft: Draft, lots?: readonly RecordedLot[], mark: DecimalMark = "."): View =>
  viewOf(draft, mark, lots);

export const sentences = (view: View): string[] =>
  view.working.wants.map(({ sentence }) => sentence);
