/** Frames of a page that nobody touches, on a clock of the test's own. */
import { describe, expect, it } from "vitest";
import { framesOf, type Page } from "../../src/workbench/resting";

/** A page whose time goes on by its frames, sixty a second, and by its timers. */
function pageOf() {
  let now = 0;
  let drawn = 0;
  let due: { at: number; run: () => void; id: number }[] = [];
  const heard: (() => void)[] = [];
  const later = (run: () => void, wait: number): number => {
    const id = Math.random();
    due.push({ at: now + wait, run, id });
    return id;
  };
  const page = {
    performance: { now: () => now },
    requestAnimationFrame: (draw: FrameRequestCallback) => later(() => draw(now), 1000 / 60),
    setTimeout: later,
    clearTimeout: (id: number) => {
      due = due.filter((each) => each.id !== id);
    },
    addEventListener: (_: string, wake: () => void) => heard.push(wake),
  } as unknown as Page;
  const next = framesOf(page);
  const draw = () => {
    drawn += 1;
    next(draw);
  };
  next(draw);
  return {
    /** How many frames are drawn in this many milliseconds. */
    frames(milliseconds: number): number {
      const [before, end] = [drawn, now + milliseconds];
      for (;;) {
        const first = [...due].sort((one, other) => one.at - other.at)[0];
        if (!first || first.at > end) break;
        due = due.filter((each) => each !== first);
        now = first.at;
        first.run();
      }
      now = end;
      return drawn - before;
    },
    touch: () => heard[0]?.(),
  };
}

describe("a page that nobody touches", () => {
  it("draws as fast as it can just after it was touched, and then looks less than five times a second", () => {
    const page = pageOf();
    expect(page.frames(400)).toBeGreaterThan(20);
    page.frames(600);
    const atRest = page.frames(1000);
    expect(atRest).toBeGreaterThan(3);
    expect(atRest).toBeLessThan(6);
  });

  it("wakes at once, and loses no frame and asks for none twice", () => {
    const page = pageOf();
    page.frames(5000);
    page.touch();
    expect(page.frames(20)).toBe(1);
    expect(page.frames(400)).toBeLessThan(26);
    page.touch();
    expect(page.frames(400)).toBeGreaterThan(20);
    expect(page.frames(1000)).toBeLessThan(26);
  });
});
