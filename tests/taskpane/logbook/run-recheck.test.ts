import { describe, expect, it, vi } from "vitest";
import { runRecheck } from "../../../src/taskpane/logbook/run-recheck";
import type { Action } from "../../../src/taskpane/logbook/state";
import { logbookOf, rowOf, usual } from "../../adopt/recheck/rows";

const book = () => [logbookOf(Array.from({ length: 1000 }, () => rowOf(usual)))];

/** A clock on which each look takes some milliseconds. */
function slowClock(step: number): () => number {
  let now = 0;
  return () => (now += step);
}

async function acted(from: { acts: Action[] }, wanted: Action["do"]): Promise<void> {
  for (let times = 0; times < 400 && !from.acts.some((each) => each.do === wanted); times += 1) {
    await new Promise((done) => setTimeout(done, 5));
  }
}

describe("a re-check beside a page that draws", () => {
  it("says how far it is once it takes longer than half a second", async () => {
    const log: { acts: Action[] } = { acts: [] };
    runRecheck(book(), (action) => log.acts.push(action), slowClock(100));
    await acted(log, "checked");
    const progress = log.acts.filter((each) => each.do === "checking");
    expect(progress.length).toBeGreaterThan(0);
    expect(progress[0]).toMatchObject({ of: 1000 });
    expect(log.acts[log.acts.length - 1]?.do).toBe("checked");
  });

  it("says nothing in between when it is quick", async () => {
    const log: { acts: Action[] } = { acts: [] };
    runRecheck(
      book(),
      (action) => log.acts.push(action),
      () => 0,
    );
    await acted(log, "checked");
    expect(log.acts.map((each) => each.do)).toEqual(["checked"]);
  });

  it("stops when it is told to, and reports nothing", async () => {
    const log: { acts: Action[] } = { acts: [] };
    const running = runRecheck(book(), (action) => log.acts.push(action), slowClock(100));
    running.stop();
    await acted(log, "stopped");
    expect(log.acts.map((each) => each.do)).toEqual(["stopped"]);
  });

  it("says so when it breaks off, and tells the console why", async () => {
    const told = vi.spyOn(console, "error").mockImplementation(() => undefined);
    const log: { acts: Action[] } = { acts: [] };
    const [good] = book();
    // cells that were never read
    const broken = { mapping: good?.mapping, cells: undefined } as never;
    runRecheck([broken], (action) => log.acts.push(action));
    await acted(log, "broke-off");
    expect(log.acts.map((each) => each.do)).toEqual(["broke-off"]);
    expect(told).toHaveBeenCalledOnce();
    told.mockRestore();
  });
});
