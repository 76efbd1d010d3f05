/** A word in passing: it never stands in the way. */
import type { DecimalMark } from "../../widgets/typed-number";
import type { Draft } from "../draft";
import type { Figures } from "../figures";
import type { Working } from "../working";

export interface Nudge {
  /** What it is about; one of each at most. */
  readonly about: string;
  /** To check, or to know. */
  readonly tone: "check" | "know";
  readonly sentence: string;
}

export interface Seen {
  readonly draft: Draft;
  readonly figures: Figures;
  readonly working: Working;
  /** 2026-09-30. */
  readonly today: string;
  readonly mark: DecimalMark;
}

export const check = (about: string, sentence: string): Nudge => ({
  about,
  tone: "check",
  sentence,
});
export const know = (about: string, sentence: string): Nudge => ({ about, tone: "know", sentence });
