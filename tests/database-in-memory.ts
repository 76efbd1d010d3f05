/** As much of a browser's database as our stores ask for, gone with the test. */

interface Told {
  result?: unknown;
  onsuccess?: () => void;
  oncomplete?: () => void;
}

interface Range {
  readonly lower: string;
  readonly upper: string;
}

const told = (result?: unknown): Told => {
  const request: Told = { result };
  queueMicrotask(() => request.onsuccess?.());
  return request;
};

/** After what was asked, and what was asked when that was answered. */
const completed = (): Told & { abort: () => void } => {
  const transaction: Told & { abort: () => void } = { abort: () => undefined };
  queueMicrotask(() => queueMicrotask(() => queueMicrotask(() => transaction.oncomplete?.())));
  return transaction;
};

function objectsOf(values: Map<string, unknown>) {
  const transaction = completed();
  const copy = (value: unknown): unknown => structuredClone(value);
  const within = (range?: Range): string[] =>
    [...values.keys()].sort().filter((key) => !range || (key >= range.lower && key <= range.upper));
  return {
    transaction,
    put(value: unknown, key: string) {
      values.set(key, copy(value));
      return told(key);
    },
    delete(key: string) {
      values.delete(key);
      return told();
    },
    get: (key: string) => told(copy(values.get(key))),
    getAll: (range?: Range) => told(within(range).map((key) => copy(values.get(key)))),
    getAllKeys: (range?: Range) => told(within(range)),
  };
}

/** What stands in the place of `indexedDB` and `IDBKeyRange`. */
export function databaseInMemory() {
  const all = new Map<string, Map<string, unknown>>();
  return {
    indexedDB: {
      open(name: string) {
        const values = all.get(name) ?? new Map<string, unknown>();
        all.set(name, values);
        return told({ transaction: () => ({ objectStore: () => objectsOf(values) }) });
      },
    },
    IDBKeyRange: { bound: (lower: string, upper: string): Range => ({ lower, upper }) },
    empty: () => {
      for (const values of all.values()) values.clear();
    },
  };
}
