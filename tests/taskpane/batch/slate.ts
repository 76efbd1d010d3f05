/** Batches for tests, made as the pane makes them: action by action, over lots on record. */
import { type Draft, newDraft } from "../../../src/taskpane/batch/draft";
import type { Picked } from "../../../src/taskpane/batch/picks";
import type { NumberFieldId } from "../../../src/taskpane/batch/fields";
import { type Action, reduce } from "../../../src/taskpane/batch/reducer";
import { type View, viewOf } from "../../../src/taskpane/batch/view-of";
import type { DecimalMark } from "../../../src/taskpane/widgets/typed-number";
import type { RecordedLot } from "../../../src/workbook/planning/read-lots";

const lot = (mark: string, acidValue: number, more: Partial<RecordedLot> = {}): RecordedLot => ({
  lot: mark,
  stage: "as received",
  oil: "",
  titrantBase: "KOH",
  acidValue,
  ffa: (acidValue * 282) / 561,
  halfWidth: 0.1,
  shared: 0,
  worth: { word: "Good", why: [] },
  trouble: "",
  isAsIfPure: false,
  ...more,
});

/** An oil not named: 0.915 kg/L at 20 C. */
const lots: readonly RecordedLot[] = [
  lot("A", 5),
  lot("B", 1),
  lot("C", 20),
  lot("D", 5, { isAsIfPure: true }),
  lot("E", 5, { titrantBase: "NaOH" }),
  lot("F", 5, { halfWidth: undefined }),
  lot("K", 5, { worth: { word: "Not yet", why: ["The two lie 0.50 mL apart."] } }),
  lot("G", 5, { acidValue: undefined, ffa: undefined, trouble: "#N/A" }),
  lot("H", 5, { oil: "tallow" }),
  lot("I", 5, { oil: "whale" }),
  { ...lot("", 5), lot: 41 },
];

export interface Slate {
  readonly lots?: readonly string[];
  readonly shares?: Readonly<Record<string, string>>;
  readonly typed?: Partial<Record<NumberFieldId, string>>;
  readonly picked?: Partial<Picked>;
  readonly batch?: string;
}

export const after = (draft: Draft, ...actions: readonly Action[]): Draft =>
  actions.reduce(reduce, draft);

/** A hundred litres of lot A, KOH of 90 %, 0.765 % pure, 6 to 1, 5 % allowed. */
export const whole: Slate = {
  lots: ["A"],
  typed: { amount: "100", assay: "90", chargePercent: "0.765", limit: "5" },
  picked: { chargeIs: "pure" },
  batch: "B-1",
};

export const but = (change: Slate): Slate => ({
  ...whole,
  ...change,
  typed: { ...whole.typed, ...change.typed },
  picked: { ...whole.picked, ...change.picked },
});

export function draftOf(slate: Slate): Draft {
  const { lots: marks = [], shares = {}, typed = {}, picked = {}, batch = "" } = slate;
  return after(
    newDraft(),
    ...marks.map((mark): Action => ({ do: "choose-lot", lot: mark, isChosen: true })),
    ...Object.entries(shares).map(([mark, text]): Action => ({ do: "share", lot: mark, text })),
    { do: "pick", picked: picked.base ? { base: picked.base } : {} },
    { do: "pick", picked },
    ...Object.entries(typed).map(([field, text]): Action => ({
      do: "type",
      field: field as NumberFieldId,
      text,
    })),
    { do: "write", words: { batch } },
  );
}

export const seen = (slate: Slate, mark: DecimalMark = "."): View =>
  viewOf(draftOf(slate), mark, lots);

export const sentences = (view: View): string[] => view.wants.map(({ sentence }) => sentence);
