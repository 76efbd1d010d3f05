/**
 * What My bench fills in of a draft that is begun: only what is empty, and only what belongs to what was
 * typed. What was typed or picked stays.
 */
import type { BenchValues } from "../../workbook/tables/bench";
import type { batch } from "../batch/batch";
import type { Draft as BatchDraft } from "../batch/draft";
import { type BeginWith, intoGaps, type SteppedTask } from "../stepped/entered";
import type { Draft as TitrationDraft } from "../titrate/draft";
import type { titration } from "../titrate/titration";
import type { whatIf } from "../what-if/what-if";
import type { Draft as WhatIfDraft } from "../what-if/draft";
import type { DecimalMark } from "../widgets/typed-number";
import { standingFrom, standingOf, titrationFrom } from "./begin-from";

const without = (all: object, ids: readonly string[]): object =>
  Object.fromEntries(Object.entries(all).filter(([id]) => !ids.includes(id)));

/** What is recorded stays as it was recorded. */
const nothing = { do: "begin-with", typed: {}, picked: {} } as const;

/** A strength goes with its base, and its ± with the strength. */
export function titrationGaps(draft: TitrationDraft, values: BenchValues, mark: DecimalMark) {
  if (draft.isRecorded) return nothing;
  const first = titrationFrom(values, mark);
  const gaps = intoGaps<typeof titration>(draft, first);
  const { way, base } = draft.picked;
  const typed = draft.typed.molarity ?? "";
  const isTheirs = typed !== "" && typed !== first.typed.molarity;
  const isAnother = way !== "molarity" || isTheirs || (values.titrantBase ?? base) !== base;
  return isAnother
    ? { ...gaps, typed: without(gaps.typed, ["molarity", "strengthPercent"]) }
    : {
        ...gaps,
        picked: gaps.typed.molarity === undefined ? {} : { oneTenth: "molarity" as const },
      };
}

/** A charge goes with its unit and with whether it is pure: where nothing of it is said, all three come. */
export function batchGaps(draft: BatchDraft, values: BenchValues, mark: DecimalMark) {
  if (draft.isRecorded) return nothing;
  const standing = standingFrom(values, mark, draft.picked.base);
  const gaps = intoGaps<typeof batch>(draft, standing);
  const { chargePercent = "", chargeGrams = "" } = draft.typed;
  const isOpen = chargePercent === "" && chargeGrams === "" && draft.picked.chargeIs === "";
  const more = draft.picked.methanolBy === "ratio" ? [] : ["ratio"];
  return isOpen
    ? { ...gaps, picked: standing.picked, typed: without(gaps.typed, more) }
    : { ...gaps, typed: without(gaps.typed, ["chargePercent", "chargeGrams", ...more]) };
}

export const whatIfGaps = (draft: WhatIfDraft, values: BenchValues, mark: DecimalMark) =>
  intoGaps<typeof whatIf>(draft, standingOf(draft, values, mark));

/** "Burette step 0.05 mL", a figure or a mark each. */
export const gapWords = <Task extends SteppedTask>(
  task: Task,
  { typed, words }: BeginWith<Task>,
): readonly string[] => [
  ...Object.entries<string | undefined>(typed).map(([id, text = ""]) =>
    `${task.fields[id]?.label ?? id} ${text} ${task.fields[id]?.unit ?? ""}`.trim(),
  ),
  ...Object.entries<string | undefined>(words ?? {}).map(
    ([id, text = ""]) => `${task.words[id]?.label ?? id} ${text}`,
  ),
];
