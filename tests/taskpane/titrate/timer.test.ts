import { endPoints } from "../../../src/core/reference/end-points";
import { describe, expect, it } from "vitest";
import { idle, left, runTimer, type Timer, timerSaid } from "../../../src/taskpane/titrate/timer";

const start = (seconds: number, now: number): Timer =>
  runTimer(idle, { do: "start", seconds, now });
const toggle = (timer: Timer, now: number, seconds?: number): Timer =>
  runTimer(timer, { do: "toggle", seconds, now });
const tick = (timer: Timer, now: number): Timer => runTimer(timer, { do: "tick", now });

describe("the end-point timer", () => {
  it("offers 15 s and 30 s, each with the standards that ask for it", () => {
    expect(endPoints).toEqual([
      { seconds: 15, asked: "ISO 660, EN 14104, ASTM D974" },
      { seconds: 30, asked: "AOCS Ca 5a-40" },
    ]);
  });

  it("runs for its seconds and is over then, not before", () => {
    const timer = start(15, 1000);
    expect(left(timer, 6000)).toBe(10_000);
    expect(tick(timer, 15_999).state).toBe("running");
    expect(tick(timer, 16_000).state).toBe("over");
  });

  it("is over also when the machine slept in between", () => {
    expect(tick(start(15, 0), 3_600_000).state).toBe("over");
  });

  it("pauses and goes on with what was left", () => {
    const paused = toggle(start(30, 0), 12_000);
    expect(left(paused, 99_000)).toBe(18_000);
    expect(left(toggle(paused, 99_000), 100_000)).toBe(17_000);
  });

  it("begins anew by the same key once it is over, if it is known how long", () => {
    const over = tick(start(15, 0), 20_000);
    expect(left(toggle(over, 30_000, 15), 30_000)).toBe(15_000);
    expect(toggle(over, 30_000)).toBe(over);
    expect(toggle(idle, 0)).toBe(idle);
  });

  it("says what a listener needs: the start, a pause, the end, and not each second", () => {
    const running = start(15, 0);
    expect(timerSaid(running)).toBe("15 seconds running. Space pauses.");
    expect(timerSaid(tick(running, 5000))).toBe(timerSaid(running));
    expect(timerSaid(toggle(running, 5500))).toBe("Paused with 10 seconds left.");
    expect(timerSaid(tick(running, 15_000))).toContain("15 seconds are over.");
    expect(timerSaid(idle)).toBe("");
  });
});
