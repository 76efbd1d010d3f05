/**
 * The embedded spreadsheet asks for its next frame at once, whether there is anything to draw or not: a page
 * that nobody touched took a seventh of a core, and the battery of a telephone at the bench with it. While
 * nobody touches the page it looks ten times a second; the next touch or key wakes it at once.
 */
const stirs = ["pointerdown", "pointermove", "wheel", "touchmove", "keydown", "input", "focusin"];

/** Milliseconds after the last touch in which the page still draws as fast as it can. */
const awake = 500;
/** Milliseconds from one look to the next while it rests. */
const between = 100;

declare global {
  /** Asked for instead of the next frame; see cli/build/mended-library.js. */
  var titrebookNextFrame: ((draw: FrameRequestCallback) => number) | undefined;
}

/** What of a page this needs. */
export type Page = Pick<
  Window,
  "requestAnimationFrame" | "setTimeout" | "clearTimeout" | "addEventListener"
> & { readonly performance: Pick<Performance, "now"> };

/** Returns what asks for the next frame, now or after a rest. */
export function framesOf(page: Page): (draw: FrameRequestCallback) => number {
  let stirred = page.performance.now();
  const resting = new Map<number, FrameRequestCallback>();
  const wake = () => {
    stirred = page.performance.now();
    for (const [rest, draw] of resting) {
      page.clearTimeout(rest);
      page.requestAnimationFrame(draw);
    }
    resting.clear();
  };
  for (const stir of stirs) page.addEventListener(stir, wake, { capture: true, passive: true });
  return (draw) => {
    if (page.performance.now() - stirred < awake) return page.requestAnimationFrame(draw);
    const rest = page.setTimeout(() => {
      resting.delete(rest);
      page.requestAnimationFrame(draw);
    }, between);
    resting.set(rest, draw);
    return rest;
  };
}

export function restWhenIdle(): void {
  globalThis.titrebookNextFrame = framesOf(window);
}
