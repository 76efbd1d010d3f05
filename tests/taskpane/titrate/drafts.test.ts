import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  keeper,
  type Later,
  withinMilliseconds,
} from "../../../src/taskpane/titrate/drafts/keeper";
import { memoryDrafts } from "./drafts-in-memory";
import type { DraftStore } from "../../../src/taskpane/titrate/drafts/store";
import { draftFrom } from "../../../src/taskpane/titrate/stored";
import { outdated } from "../../../src/taskpane/titrate/lots-kept";
import { after, draftOf, whole } from "./slip";

/** Time that passes when it is told to. */
function standingTime(): Later & { pass(milliseconds: number): void } {
  let now = 0;
  let waiting: { at: number; run: () => void }[] = [];
  return {
    after(milliseconds, run) {
      const timer = { at: now + milliseconds, run };
      waiting.push(timer);
      return () => {
        waiting = waiting.filter((each) => each !== timer);
      };
    },
    pass(milliseconds) {
      now += milliseconds;
      const due = waiting.filter(({ at }) => at <= now);
      waiting = waiting.filter(({ at }) => at > now);
      for (const { run } of due) run();
    },
  };
}

const settled = (): Promise<void> => new Promise((done) => setTimeout(done, 0));
const named = (id: string, used = "2.40") =>
  after({ ...draftOf(whole), id }, { do: "type", field: "used", text: used });

function bench() {
  let clock = 0;
  const store = memoryDrafts(() => ++clock);
  const time = standingTime();
  const failures: boolean[] = [];
  return { store, time, failures, keeping: keeper(store, time, (isSo) => failures.push(isSo)) };
}

const ids = async (store: DraftStore) => (await store.all()).map(({ draft }) => draft.id);

describe("drafts", () => {
  it("come back as they were kept, latest first", async () => {
    const { store } = bench();
    await store.keep(named("a"));
    await store.keep(named("b"));
    expect(await ids(store)).toEqual(["b", "a"]);
    expect((await store.all())[1]?.draft).toEqual(named("a"));
    await store.forget("b");
    expect(await ids(store)).toEqual(["a"]);
  });

  it("are written within a second of typing, the latest text once", async () => {
    const { store, time, keeping } = bench();
    expect(withinMilliseconds).toBeLessThan(1000);
    for (const used of ["2", "2.", "2.4"]) {
      keeping.soon(named("a", used));
      time.pass(100);
    }
    expect(await ids(store)).toEqual([]);
    time.pass(withinMilliseconds);
    await settled();
    expect((await store.all())[0]?.draft.typed.used).toBe("2.4");
  });

  it("are written at once at Enter, and the text that waited does not come after it", async () => {
    const { store, time, keeping } = bench();
    keeping.soon(named("a", "2.4"));
    await keeping.now(named("a", "2.45"));
    time.pass(10_000);
    await settled();
    expect((await store.all())[0]?.draft.typed.used).toBe("2.45");
  });

  it("are asked to be written at once, though an earlier writing is not done: a page that closes does not wait", () => {
    const { time } = bench();
    const asked: (string | undefined)[] = [];
    const slow: DraftStore = {
      ...bench().store,
      keep: (draft) => {
        asked.push(draft.typed.used);
        return new Promise(() => undefined);
      },
    };
    const keeping = keeper(slow, time, () => undefined);
    void keeping.now(named("a", "2.4"));
    void keeping.now(named("a", "2.45"));
    expect(asked).toEqual(["2.4", "2.45"]);
  });

  it("are both written when one lot is left for another", async () => {
    const { store, keeping } = bench();
    keeping.soon(named("a", "1"));
    await keeping.now(named("b", "2"));
    expect((await ids(store)).sort()).toEqual(["a", "b"]);
    keeping.soon(named("c"));
    keeping.soon(named("d"));
    await keeping.now();
    expect((await ids(store)).sort()).toEqual(["a", "b", "c", "d"]);
  });

  it("do not come back after they were forgotten", async () => {
    const { store, time, keeping } = bench();
    keeping.soon(named("a"));
    await keeping.forget("a");
    time.pass(10_000);
    await settled();
    expect(await ids(store)).toEqual([]);
  });

  it("say when they cannot be kept, and when they can again", async () => {
    let isFull = true;
    const { store, time } = bench();
    const full: DraftStore = {
      ...store,
      keep: (draft) => (isFull ? Promise.reject(new Error("full")) : store.keep(draft)),
    };
    const failures: boolean[] = [];
    const keeping = keeper(full, time, (isSo) => failures.push(isSo));
    await keeping.now(named("a"));
    isFull = false;
    await keeping.now(named("a"));
    expect(failures).toEqual([true, false]);
    expect(await ids(store)).toEqual(["a"]);
  });

  it("stay at hand for a while after they were recorded; those under way always", () => {
    const kept = Array.from({ length: 9 }, (_, index) => ({
      draft: { ...named(String(index)), isRecorded: index !== 8 },
      keptAt: 100 - index,
    }));
    expect(outdated(kept).map(({ draft }) => draft.id)).toEqual(["5", "6", "7"]);
  });
});

describe("a stored draft", () => {
  it("is read back whole", () => {
    const draft = after(named("a"), { do: "omit", index: 0, reason: "bubble" });
    expect(draftFrom(JSON.parse(JSON.stringify(draft)))).toEqual(draft);
  });

  it("is believed part by part", () => {
    const found = draftFrom({
      version: 1,
      id: "a",
      begunOn: "2026-09-30",
      step: "nowhere",
      typed: { used: 5, mass: "10", unknown: "x" },
      picked: { base: "coal", way: "phthalate", oil: "=1+1" },
      words: { lot: 7, note: "n" },
      titres: [{ used: "2.4" }, { used: "x" }, null, { used: "2.5", start: "1", omitted: "spilt" }],
      blanks: "none",
    });
    expect(found).toMatchObject({
      step: "titrant",
      typed: { mass: "10" },
      picked: { base: "KOH", way: "phthalate", oil: "=1+1" },
      words: { lot: "", note: "n" },
      titres: [{ used: "2.4" }, { used: "2.5", omitted: "spilt" }],
      blanks: [],
      isRecorded: false,
    });
  });

  it("of another kind is none, and nothing stored makes it throw", () => {
    for (const value of [undefined, null, 1, "x", [], {}, { version: 2, id: "a" }]) {
      expect(draftFrom(value)).toBeUndefined();
    }
    fc.assert(
      fc.property(fc.dictionary(fc.string(), fc.anything()), fc.anything(), (value, titres) => {
        const found = draftFrom({ ...value, version: 1, id: "a", titres, typed: value });
        expect(found?.id).toBe("a");
      }),
    );
  });
});
