/**
 * The files before the last steps, to go back to, and those that were gone back from. A step is an act, or
 * all that was typed between two of them.
 */
import type { StructuralAct } from "../../xlsx";

export type Step =
  | { readonly act: StructuralAct; readonly says: string }
  /** In how many cells something was typed or changed. */
  | { readonly cells: number };

/** A file on one side of a step. */
export interface Kept {
  readonly file: Uint8Array;
  readonly step: Step;
}

/** Steps that can be taken back, one after another. */
const most = 20;
/** Bytes of all these files. */
const room = 200_000_000;

const sizeOf = (kept: readonly Kept[]): number =>
  kept.reduce((sum, { file }) => sum + file.length, 0);

/** What is left when the oldest go for want of room. */
function lastOnes(all: readonly Kept[]): readonly Kept[] {
  let kept = all.slice(-most);
  while (kept.length > 1 && sizeOf(kept) > room) kept = kept.slice(1);
  return kept;
}

export class ActHistory {
  constructor(
    private readonly before: readonly Kept[] = [],
    private readonly after: readonly Kept[] = [],
  ) {}

  /** A step was done: what was taken back before it is no more. @param from the file before it */
  done(from: Uint8Array, step: Step): ActHistory {
    return new ActHistory(lastOnes([...this.before, { file: from, step }]));
  }

  /** What was taken back before is no more. @param to a step that can be done next, and the file after it */
  next(to?: Kept): ActHistory {
    return new ActHistory(this.before, to ? [to] : []);
  }

  /** @param now the file as it is */
  back(now: Uint8Array): ActHistory {
    const { step } = this.before.at(-1) ?? {};
    const after = step ? [...this.after, { file: now, step }] : this.after;
    return new ActHistory(this.before.slice(0, -1), lastOnes(after));
  }

  forth(now: Uint8Array): ActHistory {
    const { step } = this.after.at(-1) ?? {};
    const before = step ? [...this.before, { file: now, step }] : this.before;
    return new ActHistory(lastOnes(before), this.after.slice(0, -1));
  }

  /** The file to go back or forth to, and the step on the way. */
  to(where: "back" | "forth"): Kept | undefined {
    return (where === "back" ? this.before : this.after).at(-1);
  }

  get counts(): { readonly back: number; readonly forth: number } {
    return { back: this.before.length, forth: this.after.length };
  }
}
