/**
 * Values in IndexedDB that survive a page closed in the middle of a word. A closing page does not wait
 * for a database: what was typed in the last half second would be lost. So each value is first noted
 * in localStorage, which is written there and then, and the note goes when the database has the value.
 */
import { createStore, del, entries, promisifyRequest, type UseStore } from "idb-keyval";

/** A browser may keep no notes, or have no room for them: then the database alone must do. */
function notes(): Storage | undefined {
  try {
    return globalThis.localStorage;
  } catch {
    return undefined;
  }
}

function note(key: string, text: string): void {
  try {
    notes()?.setItem(key, text);
  } catch {
    // the database is asked all the same
  }
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

export class KeptValues {
  private readonly store: UseStore;
  private readonly prefix: string;

  constructor(database: string, name: string) {
    this.store = createStore(database, name);
    this.prefix = `${database}/${name}/`;
  }

  /** @param value plain data, as JSON has it */
  async put(key: string, value: unknown): Promise<void> {
    const text = JSON.stringify(value);
    note(this.prefix + key, text);
    await this.store("readwrite", (objects) => {
      objects.put(value, key);
      return promisifyRequest(objects.transaction);
    });
    // a later value may have been noted meanwhile
    if (notes()?.getItem(this.prefix + key) === text) notes()?.removeItem(this.prefix + key);
  }

  async all(): Promise<[IDBValidKey, unknown][]> {
    await this.recover();
    return entries(this.store);
  }

  async get(key: string): Promise<unknown> {
    return (await this.all()).find(([each]) => each === key)?.[1];
  }

  async forget(key: string): Promise<void> {
    notes()?.removeItem(this.prefix + key);
    await del(key, this.store);
  }

  async forgetThose(isOne: (key: string) => boolean): Promise<void> {
    for (const [key] of await this.all()) {
      if (typeof key === "string" && isOne(key)) await this.forget(key);
    }
  }

  /** A note that is still there is later than what the database has. */
  private async recover(): Promise<void> {
    const left = Object.keys(notes() ?? {}).filter((key) => key.startsWith(this.prefix));
    for (const key of left) {
      const value = parsed(notes()?.getItem(key) ?? "");
      if (value === undefined) notes()?.removeItem(key);
      else await this.put(key.slice(this.prefix.length), value);
    }
  }
}
