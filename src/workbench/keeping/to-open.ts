/** Which workbook the page begins with: the one this tab had, or the browser's last; or the example. */
import type { Kept } from "./entry";
import type { KeptWorkbooks } from "./store";
import type { TabMemory } from "./tab-memory";

export type ToOpen =
  | { readonly what: "example" }
  | { readonly what: "kept"; readonly kept: Kept }
  /** It stopped the tab the last time, or half of it is missing. */
  | { readonly what: "broken"; readonly sentence: string };

const example: ToOpen = { what: "example" };

/** Milliseconds for which a database that does not answer is waited for. */
const patience = 3_000;

async function find(store: KeptWorkbooks, memory: TabMemory): Promise<ToOpen> {
  const tab = memory.read();
  const id = tab?.id ?? (await store.open());
  if (id === "") return example;
  const entry = await store.entry(id);
  if (!entry) return example;
  if (tab?.isOpening === true) {
    memory.note({ id: "", isOpening: false });
    const sentence = `Opening ${entry.name} stopped this page the last time, so the example is open. It is still kept: press Open to try it again.`;
    return { what: "broken", sentence };
  }
  const kept = await store.get(id);
  if (!kept) {
    const sentence = `Of ${entry.name} this browser kept a part only, so it could not be opened again. The example is open.`;
    return { what: "broken", sentence };
  }
  const place = tab?.place ?? entry.place;
  return { what: "kept", kept: { ...kept, entry: { ...entry, ...(place ? { place } : {}) } } };
}

/** Never fails, and never waits for long: whatever was kept, the page opens. */
export function toOpen(store: KeptWorkbooks, memory: TabMemory): Promise<ToOpen> {
  const late = new Promise<ToOpen>((done) => setTimeout(() => done(example), patience));
  return Promise.race([find(store, memory).catch(() => example), late]);
}
