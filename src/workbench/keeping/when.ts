/** When the open workbook is kept: at a pause after edits, and the rarer the longer it takes. */

/** Milliseconds without an edit. */
const pause = 2_000;
/** Somebody who goes on and on is not waited for longer than this. */
const most = 20_000;
/** Keeping takes at most one part of so many of the time. */
const share = 5;
const longest = 60_000;

export interface Timing {
  /** Milliseconds, by one clock: the first edit that is not kept, and the last. */
  readonly first: number;
  readonly last: number;
  /** How long keeping took the last time; 0 when it was not done yet. */
  readonly took: number;
}

/** Milliseconds from now; 0 when it is due. */
export function untilKept({ first, last, took }: Timing, now: number): number {
  const rest = Math.min(longest, Math.max(pause, share * took));
  const due = Math.min(last + rest, first + Math.max(most, rest));
  return Math.max(0, due - now);
}
