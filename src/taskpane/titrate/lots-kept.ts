/** How many recorded titrations stay at hand: enough to take one up again after an undo. */
import type { Kept } from "./drafts/store";

const recordedKept = 5;

/** Recorded titrations beyond the latest few, to be forgotten. What is under way is never among them. */
export const outdated = (kept: readonly Kept[]): Kept[] =>
  kept.filter(({ draft }) => draft.isRecorded).slice(recordedKept);
