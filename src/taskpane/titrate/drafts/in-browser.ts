/**
 * Drafts in the browser's own storage (IndexedDB). In a spreadsheet program several sites share one
 * browser, so every key begins with the partition the program gives us.
 */
import { KeptValues } from "../../drafts/kept-values";
import { ofWorkbook } from "../../drafts/of-workbook";
import { type DraftStore, type Kept, latestFirst } from "./store";
import { draftFrom } from "../stored";

/** @param partition what the program calls this store's part; "" where there is none */
export function browserDrafts(partition: string, clock: () => number) {
  const store = new KeptValues("titrebook", "drafts");
  const beginning = (workbook: string): string =>
    `${partition}/${ofWorkbook("titration", workbook)}/`;

  const read = (prefix: string, key: IDBValidKey, value: unknown): Kept[] => {
    if (typeof key !== "string" || !key.startsWith(prefix)) return [];
    const { draft, keptAt } = (value ?? {}) as { draft?: unknown; keptAt?: unknown };
    const found = draftFrom(draft);
    return found ? [{ draft: found, keptAt: typeof keptAt === "number" ? keptAt : 0 }] : [];
  };

  return {
    of(workbook: string): DraftStore {
      const prefix = beginning(workbook);
      return {
        all: async () =>
          latestFirst((await store.all()).flatMap(([key, value]) => read(prefix, key, value))),
        keep: (draft) => store.put(`${prefix}${draft.id}`, { draft, keptAt: clock() }),
        forget: (id) => store.forget(`${prefix}${id}`),
      };
    },
    /** All that were begun beside a workbook; never those of the one that the page comes with. */
    forget: async (workbook: string): Promise<void> => {
      if (workbook === "") return;
      await store.forgetThose((key) => key.startsWith(beginning(workbook)));
    },
  };
}
