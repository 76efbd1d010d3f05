/** What the row of a batch tells its fuel beforehand, and a fuel begun from elsewhere: nothing under way is lost. */
import { trialAnswers } from "../../core/batch/went";
import { type Exact, one } from "../../core/exact/exact";
import { amountUnitNamed } from "../../core/quantity/units";
import { type Base, baseNamed } from "../../core/reference/bases";
import { numberOf, type RecordedBatch } from "../../workbook/planning/read-batches";
import { valueText } from "../../workbook/planning/preview-text";
import { went } from "../../workbook/tables/went";
import { type DecimalMark, withMark } from "../widgets/typed-number";
import { type Draft, isUnderWay, newDraft } from "./draft";
import { type MadeIn, picks } from "./picks";

type Word<Pick extends keyof typeof picks> = Draft["picked"][Pick];

/** Litres in one of these. */
export const litresIn = (madeIn: MadeIn): Exact => amountUnitNamed(madeIn)?.factor ?? one;

/** As it would be typed and picked; "" where the row does not say. */
export interface OfRow {
  readonly base: Base["name"] | undefined;
  readonly typed: { readonly washes: string; readonly litres: string };
  readonly picked: { readonly washed: Word<"washed">; readonly trial: Word<"trial"> };
  /** Where it says how the trial came out; "" where it does not. */
  readonly trialFrom: string;
}

const nothing: OfRow = {
  base: undefined,
  typed: { washes: "", litres: "" },
  picked: { washed: "", trial: "" },
  trialFrom: "",
};

const trialOf = (seen: string): Word<"trial"> => trialAnswers.find((each) => each === seen) ?? "";

/** The trial as somebody picked it on the bench card, recorded there or not. */
export function withTrial(told: OfRow, seen: string, batch: string): OfRow {
  const trial = trialOf(seen);
  if (trial === "") return told;
  const trialFrom = `From the bench card of ${batch}: ${seen}.`;
  return { ...told, picked: { ...told.picked, trial }, trialFrom };
}

const digits = 5;

/** @param madeIn what the fuel is measured in here */
export function ofRow(
  row: RecordedBatch | undefined,
  mark: DecimalMark,
  madeIn: MadeIn = "l",
): OfRow {
  if (row === undefined) return nothing;
  const figure = (heading: string, per = 1): string => {
    const value = numberOf(row.under(heading));
    // gallons come to litres with more digits than anybody measured
    return value === undefined || value <= 0
      ? ""
      : withMark(String(Number((value / per).toPrecision(digits))), mark);
  };
  const washes = figure(went.washes);
  const told: OfRow = {
    ...nothing,
    base: baseNamed(row.base)?.name,
    typed: { washes, litres: figure(went.litres, litresIn(madeIn).toNumber()) },
    picked: { ...nothing.picked, washed: washes === "" ? "" : "yes" },
  };
  return withTrial(told, valueText(row.under(went.trial)), valueText(row.batch));
}

/** Is what is there somebody's own? Not where it is nothing, or what another row said. */
const given = <Text extends string>(now: Text | undefined, before: Text, after: Text): Text =>
  now === undefined || now === "" || now === before ? after : now;

const without = (typed: Draft["typed"]): Draft["typed"] =>
  Object.fromEntries(Object.entries(typed).filter(([, text]) => text !== ""));

/** This batch's fuel: what `row` says takes the place of what is empty, and of what `before` had said. */
export function named(draft: Draft, batch: string, row: OfRow, before: OfRow): Draft {
  const { typed, picked, words } = draft;
  const trial = given(picked.trial, before.picked.trial, row.picked.trial);
  const isTold = trial !== "" && trial === row.picked.trial && trial !== picked.trial;
  const wasTold = words.trialFrom !== "" && row.picked.trial === trial;
  return {
    ...draft,
    isRecorded: false,
    words: { ...words, batch, trialFrom: isTold || wasTold ? row.trialFrom : "" },
    typed: without({
      ...typed,
      washes: given(typed.washes, before.typed.washes, row.typed.washes),
      litres: given(typed.litres, before.typed.litres, row.typed.litres),
    }),
    picked: {
      ...picked,
      base: row.base ?? picked.base,
      washed: given(picked.washed, before.picked.washed, row.picked.washed),
      trial,
    },
  };
}

/** Measured in another unit: what the row said is said in it, what somebody typed stays as typed. */
export function measuredIn(draft: Draft, madeIn: MadeIn, told: (madeIn: MadeIn) => OfRow): Draft {
  const [before, after] = [draft.picked.madeIn, madeIn].map((each) => told(each).typed.litres);
  const { litres = "" } = draft.typed;
  return {
    ...draft,
    isRecorded: false,
    picked: { ...draft.picked, madeIn },
    typed: without({ ...draft.typed, litres: litres === before ? (after ?? "") : litres }),
  };
}

/** Another batch's fuel is under way: to begin this one would lose it. */
export const isOther = (draft: Draft, batch: string): boolean => {
  const here = draft.words.batch.trim();
  return isUnderWay(draft) && here !== "" && here !== batch;
};

/** Measured in what its card speaks in, unless it is under way in another unit. */
export function asOnCard(now: Draft, batch: string, madeIn: string | undefined): Draft {
  const draft = isUnderWay(now) && !isOther(now, batch) ? now : newDraft(now);
  const unit = picks.madeIn.choices.map(([each]) => each).find((each) => each === madeIn);
  const isSaid = (draft.typed.litres ?? "") !== "";
  return unit === undefined || isSaid
    ? draft
    : { ...draft, picked: { ...draft.picked, madeIn: unit } };
}

/** Opened for a batch. What is under way for it goes on; all else is begun anew. */
export function opened(now: Draft | undefined, batch: string, row: OfRow): Draft {
  const draft = now !== undefined && isUnderWay(now) && !isOther(now, batch) ? now : newDraft(now);
  return { ...named(draft, batch, row, nothing), step: "batch" };
}
