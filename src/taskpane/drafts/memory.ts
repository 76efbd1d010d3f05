/** Drafts in memory, as a copy: for tests, and for a page that may keep nothing. */
import { type DraftStore, type Kept, latestFirst } from "./store";
import { draftFrom } from "./stored";

export function memoryDrafts(clock: () => number): DraftStore {
  const kept = new Map<string, string>();
  return {
    all: () =>
      Promise.resolve(
        latestFirst(
          [...kept.values()].flatMap((text) => {
            const { draft, keptAt } = JSON.parse(text) as { draft: unknown; keptAt: number };
            const read = draftFrom(draft);
            return read ? [{ draft: read, keptAt } satisfies Kept] : [];
          }),
        ),
      ),
    keep: (draft) => {
      kept.set(draft.id, JSON.stringify({ draft, keptAt: clock() }));
      return Promise.resolve();
    },
    forget: (id) => {
      kept.delete(id);
      return Promise.resolve();
    },
  };
}
