/**
 * When a draft is written: at once after an act (Enter), and within a second of typing. The latest
 * wins: a store does first what it is asked first.
 */
import type { Draft } from "../draft";
import type { DraftStore } from "./store";

/** Milliseconds from the first change to its writing, so that a burst of typing is one write. */
export const withinMilliseconds = 600;

export interface Keeper {
  /** Typing: written soon. */
  soon(draft: Draft): void;
  /** An act, or the page is about to close: written now. */
  now(draft?: Draft): Promise<void>;
  /** Drop what waits to be written, and forget the draft. */
  forget(id: string): Promise<void>;
}

export interface Later {
  after(milliseconds: number, run: () => void): () => void;
}

/** @param failed called with true when a draft could not be written, with false once one could */
export function keeper(store: DraftStore, later: Later, failed: (isSo: boolean) => void): Keeper {
  let waiting: Draft | undefined;
  let cancel: (() => void) | undefined;
  let last: Promise<void> = Promise.resolve();

  /** Told in turn; asked for at once, since a page that closes waits for no earlier writing. */
  const inTurn = (written: Promise<void>): Promise<void> => {
    const isFailed = written.then(
      () => false,
      () => true,
    );
    last = last.then(() => isFailed).then(failed);
    return last;
  };

  const now = (draft?: Draft): Promise<void> => {
    const latest = [waiting?.id === draft?.id ? undefined : waiting, draft].filter(
      (each) => each !== undefined,
    );
    cancel?.();
    waiting = cancel = undefined;
    return latest.reduce((_, each) => inTurn(store.keep(each)), last);
  };

  return {
    now,
    soon(draft) {
      if (waiting !== undefined && waiting.id !== draft.id) void now();
      waiting = draft;
      cancel ??= later.after(withinMilliseconds, () => void now());
    },
    forget(id) {
      if (waiting?.id === id) {
        cancel?.();
        waiting = cancel = undefined;
      }
      return inTurn(store.forget(id));
    },
  };
}
