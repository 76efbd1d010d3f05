/** Drafts in memory, each as a copy, as a browser's storage would keep it. */
import {
  type DraftStore,
  type Kept,
  latestFirst,
} from "../../../src/taskpane/titrate/drafts/store";
import { draftFrom } from "../../../src/taskpane/titrate/stored";

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
