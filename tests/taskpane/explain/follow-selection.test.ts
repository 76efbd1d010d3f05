import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { MemoryHost } from "../../host/memory";
import { emptySheet } from "../../host/memory/book";
import { followSelection } from "../../../src/taskpane/explain/follow-selection";

/** A cell whose function answers late: after so many readings. */
function opened(busyFor: number) {
  let readings = 0;
  const sheet = emptySheet("Log");
  sheet.cells["0,0"] = { value: "", formula: "=TITRE.DOSE(1)", format: "General" };
  const host = new MemoryHost(
    { result: () => (readings > busyFor ? 909 : { error: "#BUSY!" }) },
    { sheets: [sheet], tables: [], definedNames: {}, isReadOnly: false, isProtected: false },
  );
  const read = host.read.bind(host);
  host.read = (questions) => {
    if (questions.some(({ ask }) => ask === "selection")) readings += 1;
    return read(questions);
  };
  const shown: string[] = [];
  const stop = followSelection(host, (cell) => shown.push(cell?.shown ?? ""));
  return { host, shown, stop };
}

describe("the selected cell in the pane", () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  it("is read again while its function has not answered", async () => {
    const { shown } = opened(3);
    await vi.advanceTimersByTimeAsync(60_000);
    expect(shown).toEqual(["#BUSY!", "#BUSY!", "#BUSY!", "909"]);
    expect(vi.getTimerCount()).toBe(0);
  });

  it("is not asked for without end where the function never answers", async () => {
    const { shown } = opened(Infinity);
    await vi.advanceTimersByTimeAsync(600_000);
    expect(shown.length).toBeGreaterThan(3);
    expect(shown.length).toBeLessThan(20);
    expect(vi.getTimerCount()).toBe(0);
  });

  it("is read again when something was worked out", async () => {
    const { shown, host } = opened(0);
    await vi.advanceTimersByTimeAsync(10);
    host.change(() => undefined);
    await vi.advanceTimersByTimeAsync(10);
    expect(shown).toEqual(["909", "909"]);
  });

  it("is left alone once nobody follows it", async () => {
    const { shown, stop, host } = opened(Infinity);
    await vi.advanceTimersByTimeAsync(10);
    stop();
    host.change(() => undefined);
    await vi.advanceTimersByTimeAsync(60_000);
    expect(shown).toEqual(["#BUSY!"]);
  });
});
