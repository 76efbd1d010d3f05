/** A page that is loaded anew right after a save opens what was saved, and nothing earlier. */
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { Hold } from "../../../src/workbench/keeping/hold";
import { Keeper } from "../../../src/workbench/keeping/keeper";
import { doneWithin } from "../../../src/workbench/keeping/patience";
import { KeptWorkbooks } from "../../../src/workbench/keeping/store";
import { databaseInMemory } from "../../database-in-memory";

const earlier = new Uint8Array([1]);
const later = new Uint8Array([2]);

function opened() {
  const store = new KeptWorkbooks();
  const page = {
    edited: { now: true, count: 1, watch: () => undefined },
    isTyping: () => false,
    place: () => undefined,
    refuse: (sentence: string) => expect.unreachable(sentence),
  };
  const memory = { read: () => undefined, note: () => undefined };
  const keeper = new Keeper(store, new Hold(), memory, page, "logbook.xlsx");
  keeper.follow({
    isBusy: false,
    bytes: () => Promise.resolve(earlier),
    named: () => undefined,
  });
  return { store, keeper };
}

describe("what is said to be saved", () => {
  const { empty, ...globals } = databaseInMemory();
  beforeAll(() => {
    empty();
    for (const [each, stands] of Object.entries(globals)) vi.stubGlobal(each, stands);
  });
  afterAll(() => {
    vi.unstubAllGlobals();
  });

  it("is what the browser opens again, from the moment it is said", async () => {
    const { store, keeper } = opened();
    await keeper.now();
    await keeper.saved("weir.xlsx", later, 1, undefined);
    expect((await store.get(keeper.id))?.bytes).toEqual(later);
  });

  it("is said all the same where the database never answers", async () => {
    vi.useFakeTimers();
    let isDone = false;
    void doneWithin(5_000, new Promise(() => undefined)).then(() => (isDone = true));
    await vi.advanceTimersByTimeAsync(4_999);
    expect(isDone).toBe(false);
    await vi.advanceTimersByTimeAsync(1);
    expect(isDone).toBe(true);
    vi.useRealTimers();
  });
});
