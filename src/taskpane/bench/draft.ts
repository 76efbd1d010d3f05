/** The form of My bench as typed and picked: it follows the workbook until somebody changes it. */
import { benchIds, type BenchValues } from "../../workbook/tables/bench";
import { isObject } from "../drafts/believed";
import {
  enter,
  type EnterAction,
  type Entered,
  firstEntered,
  storedEntered,
} from "../stepped/entered";
import { type DecimalMark, withMark } from "../widgets/typed-number";
import { bench, isChoice, isFigure, isText } from "./bench";

export interface Draft extends Entered<typeof bench> {
  readonly version: 1;
  /** Something here is not in the workbook yet. */
  readonly isTouched: boolean;
}

export type Action =
  | EnterAction<typeof bench>
  /** As the workbook has it. */
  | { readonly do: "follow"; readonly values: BenchValues; readonly mark: DecimalMark };

const newDraft = (): Draft => ({ version: 1, ...firstEntered(bench), isTouched: false });

export const draftFrom = (value: unknown): Draft =>
  isObject(value) && value.version === 1
    ? { version: 1, ...storedEntered(bench, value), isTouched: value.isTouched === true }
    : newDraft();

function followed(draft: Draft, values: BenchValues, mark: DecimalMark): Draft {
  const figures = benchIds.filter(isFigure);
  const choices = benchIds.filter(isChoice);
  const of = <Id extends string>(ids: readonly Id[], text: (id: Id) => string) =>
    Object.fromEntries(ids.map((id) => [id, text(id)])) as Record<Id, string>;
  return {
    ...draft,
    typed: of(figures, (id) => withMark(values[id] ?? "", mark)),
    picked: of(choices, (id) => values[id] ?? ""),
    words: of(benchIds.filter(isText), (id) => values[id] ?? ""),
    isTouched: false,
  };
}

export function reduce(draft: Draft, action: Action): Draft {
  if (action.do === "follow") return followed(draft, action.values, action.mark);
  return { ...enter(draft, action), isTouched: draft.isTouched || action.do !== "go" };
}

/** The same values in the form as in the workbook? */
export const isAs = (draft: Draft, values: BenchValues, mark: DecimalMark): boolean => {
  const then = followed(draft, values, mark);
  return benchIds.every((id) =>
    isFigure(id)
      ? (draft.typed[id] ?? "") === then.typed[id]
      : isChoice(id)
        ? draft.picked[id] === then.picked[id]
        : isText(id) && draft.words[id].trim() === then.words[id],
  );
};
