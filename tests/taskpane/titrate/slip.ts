/** Titrations for tests, made as the pane makes them: action by action. */
import { type Draft, newDraft } from "../../../src/taskpane/titrate/draft";
import type { Picked } from "../../../src/taskpane/titrate/picks";
import type { NumberFieldId } from "../../../src/taskpane/titrate/fields";
import { type Action, reduce } from "../../../src/taskpane/titrate/reducer";
import { type View, viewOf } from "../../../src/taskpane/titrate/view-of";
import type { DecimalMark } from "../../../src/taskpane/widgets/typed-number";

export const today = "2026-09-30";

export interface Slip {
  readonly typed?: Partial<Record<NumberFieldId, string>>;
  readonly picked?: Partial<Picked>;
  readonly lot?: string;
  readonly checkedOn?: string;
  readonly titres?: readonly (string | readonly [used: string, mass: string])[];
  readonly blanks?: readonly string[];
}

export const after = (draft: Draft, ...actions: readonly Action[]): Draft =>
  actions.reduce(reduce, draft);

export function draftOf(slip: Slip): Draft {
  const { typed = {}, picked = {}, lot = "NQ-41", checkedOn = "" } = slip;
  const actions: Action[] = [
    { do: "pick", picked },
    { do: "write", words: { lot, checkedOn } },
    ...Object.entries(typed).map(([field, text]): Action => ({
      do: "type",
      field: field as NumberFieldId,
      text,
    })),
    ...(slip.blanks ?? []).map((used): Action => ({
      do: "add",
      list: "blanks",
      reading: { used },
    })),
    ...(slip.titres ?? []).map((titre): Action => {
      const reading =
        typeof titre === "string" ? { used: titre } : { used: titre[0], mass: titre[1] };
      return { do: "add", list: "titres", reading };
    }),
  ];
  return after(newDraft("one", today), ...actions);
}

export const seen = (draft: Draft, mark: DecimalMark = "."): View => viewOf(draft, mark, today);

export const viewOfSlip = (slip: Slip, mark: DecimalMark = "."): View => seen(draftOf(slip), mark);

/** Certified titrant, one mass, a blank: everything a row needs. */
export const whole: Slip = {
  typed: {
    certified: "0.0998",
    strengthPercent: "0.5",
    titreStep: "0.05",
    mass: "10",
    massStep: "0.01",
  },
  picked: { way: "certified", blank: "titrated" },
  titres: ["2.40", "2.50", "2.45"],
  blanks: ["0.15"],
};

/** One thing changed. */
export const but = (change: Slip): Slip => ({
  ...whole,
  ...change,
  typed: { ...whole.typed, ...change.typed },
  picked: { ...whole.picked, ...change.picked },
});
