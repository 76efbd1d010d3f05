/** A titrant out of the table Titrants, taken into a titration: bottle, base, strength, how known, ±, day. */
import type { Draft } from "../draft";

export interface TakenTitrant {
  readonly bottle: string;
  readonly base: Draft["picked"]["base"];
  /** mol/L, and ± %, as a person would type them; "" where no ± is known. */
  readonly strength: string;
  readonly percent: string;
  readonly howKnown: string;
  /** 2026-09-30. */
  readonly checkedOn: string;
}

export const withTitrant = (draft: Draft, taken: TakenTitrant): Draft => ({
  ...draft,
  picked: { ...draft.picked, base: taken.base, way: "kept" },
  words: {
    ...draft.words,
    bottle: taken.bottle,
    howKnown: taken.howKnown,
    checkedOn: taken.checkedOn,
  },
  typed: { ...draft.typed, kept: taken.strength, strengthPercent: taken.percent },
});

/**
 * Known in another way now: day and ± were those of the check that was kept. The bottle stays, since it
 * is most often the same one that is checked anew.
 */
export const withoutCheck = (draft: Draft): Draft => ({
  ...draft,
  words: { ...draft.words, checkedOn: "", howKnown: "" },
  typed: { ...draft.typed, strengthPercent: "" },
});
