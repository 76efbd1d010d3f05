/**
 * A titration under way, as it stands on the bench: what was typed, as it was typed, what was picked,
 * and the readings taken. A draft is plain data, so that it can be kept and taken up again.
 */
import { type Entered, firstEntered } from "../stepped/entered";
import type { Picked } from "./picks";
import { titration } from "./titration";

/** A reading that was taken. Figures are plain digits with a point, exact as typed: "2.30". */
export interface Reading {
  readonly used: string;
  readonly start?: string;
  readonly end?: string;
  readonly mass?: string;
  /** A probe's curve gave it; nobody saw a colour. */
  readonly isByProbe?: true;
  /** Left out of the mean, and why. It keeps its number. */
  readonly omitted?: string;
}

export type ReadingList = "titres" | "blanks";
export const mostReadings: Record<ReadingList, number> = { titres: 6, blanks: 3 };

/** Picks that a probe, or a reading taken back into its fields, makes for one titration. */
export type Habits = Partial<Pick<Picked, "reading" | "indicator">>;

export interface Draft extends Entered<typeof titration> {
  readonly version: 1;
  readonly id: string;
  /** Day it was begun, 2026-09-30. */
  readonly begunOn: string;
  /** What the person had picked, where something else was picked for this titration alone. */
  readonly habits: Habits;
  readonly titres: readonly Reading[];
  readonly blanks: readonly Reading[];
  /** The lot of the day that the blanks were titrated with; "" for this one. */
  readonly blanksOf: string;
  /** Why the acid is not to be used yet, as it stood when "Use it all the same" was pressed; "" for never. */
  readonly usedAllTheSame: string;
  /** It stands in the workbook. */
  readonly isRecorded: boolean;
}

/**
 * A fresh titration. After another it keeps titrant, burette, balance and habits, never a titre.
 * @param id any text not used before
 * @param today 2026-09-30
 */
export const newDraft = (id: string, today: string, after?: Draft): Draft => ({
  version: 1,
  id,
  begunOn: today,
  ...firstEntered(titration, after && { ...after, picked: { ...after.picked, ...after.habits } }),
  habits: {},
  titres: [],
  blanks: [],
  blanksOf: "",
  usedAllTheSame: "",
  isRecorded: false,
});

/**
 * The next lot of the same day at the same bench: it begins at its oil, under the same titrant, and the
 * blanks of the day count for it too. On another day they do not: solvent and eye have changed.
 */
export function nextLot(id: string, today: string, after: Draft): Draft {
  const fresh = newDraft(id, today, after);
  if (after.begunOn !== today || after.picked.blank === "") return { ...fresh, step: "oil" };
  const { blank, seconds } = after.picked;
  return {
    ...fresh,
    step: "oil",
    picked: { ...fresh.picked, blank, seconds },
    blanks: after.blanks,
    blanksOf: after.blanksOf || after.words.lot.trim(),
  };
}
