import { describe, expect, it } from "vitest";
import type { Event } from "../../src/sheet/port";
import { resting } from "../../src/sheet/port/resting";
import { openMemory } from "../host/open-memory";

/** A host whose pane is shown or hidden by hand. */
function opened() {
  let isShown = true;
  const told = new Set<() => void>();
  const memory = openMemory();
  const host = resting(memory, {
    isShown: () => isShown,
    watch: (shown) => {
      told.add(shown);
      return () => told.delete(shown);
    },
  });
  const heard: Event["event"][] = [];
  const stop = host.watch(({ event }) => heard.push(event));
  const show = (shows: boolean): void => {
    isShown = shows;
    if (shows) for (const each of told) each();
  };
  const select = (row: number): void => {
    memory.select({ sheet: "Sheet1", row, column: 0, rows: 1, columns: 1 });
  };
  const change = (): void => {
    memory.change(() => undefined);
  };
  return { heard, stop, show, select, change, told };
}

describe("a pane that nobody sees", () => {
  it("hears of events at once while it is seen", () => {
    const { heard, select, change } = opened();
    select(1);
    change();
    expect(heard).toEqual(["selection", "change"]);
  });

  it("hears nothing while it is hidden, and of each kind once when it is seen again", () => {
    const { heard, select, change, show } = opened();
    show(false);
    select(1);
    select(2);
    change();
    select(3);
    expect(heard).toEqual([]);
    show(true);
    expect(heard).toEqual(["selection", "change"]);
    show(false);
    show(true);
    expect(heard).toHaveLength(2);
  });

  it("hears nothing more once it is told to stop", () => {
    const { heard, stop, select, show, told } = opened();
    show(false);
    select(1);
    stop();
    show(true);
    select(2);
    expect(heard).toEqual([]);
    expect(told.size).toBe(0);
  });
});
