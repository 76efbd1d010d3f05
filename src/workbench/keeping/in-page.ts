/** Keeping as the page has it: the browser's own database and locks, and the memory of the tab. */
import { forgetKept } from "./forget";
import type { Entry } from "./entry";
import { Hold } from "./hold";
import { Keeper } from "./keeper";
import { KeptWorkbooks } from "./store";
import type { Surroundings } from "./surroundings";
import { tabMemory } from "./tab-memory";
import { toOpen } from "./to-open";

/** @param forgetDrafts all that the pane kept beside one workbook */
export function keepingInPage(forgetDrafts: (drafts: string) => Promise<void>) {
  const store = new KeptWorkbooks();
  const hold = new Hold();
  return {
    toOpen: () => toOpen(store, tabMemory),
    keeper: (page: Surroundings, sample: string) =>
      new Keeper(store, hold, tabMemory, page, sample),
    shelf: {
      all: () => store.all(),
      get: (id: string) => store.get(id),
      forget: (entry: Entry) => forgetKept(entry, store, forgetDrafts),
      elsewhere: () => hold.elsewhere(),
    },
  };
}
