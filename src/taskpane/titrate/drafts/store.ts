/** Where titrations under way are kept. The workbook is not such a place. */
import type { Draft } from "../draft";

export interface Kept {
  readonly draft: Draft;
  /** Milliseconds, as the clock of this machine has them. */
  readonly keptAt: number;
}

/** What is asked first is done first. Any verb may fail, by a rejected promise: a full disk, a browser that keeps nothing. */
export interface DraftStore {
  /** Latest first. What cannot be read any more is left out. */
  all(): Promise<readonly Kept[]>;
  keep(draft: Draft): Promise<void>;
  forget(id: string): Promise<void>;
}

export const latestFirst = (kept: readonly Kept[]): Kept[] =>
  [...kept].sort((a, b) => b.keptAt - a.keptAt);
