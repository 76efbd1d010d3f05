/**
 * The embedded spreadsheet asks for its next frame at once, whether there is anything to draw or not: a page
 * that nobody touched took a seventh of a core, and the battery of a telephone at the bench with it. While
 * nobody touches the page it looks five times a second; the next touch or key wakes it at once.
 */
const stirs = ["pointerdown", "pointermove", "wheel", "touchmove", "keydown", "input", "focusin"];

/** Milliseconds after the last touch in which the page still draws as fast as it can. */
const awake = 500;
/** Milliseconds from one look to the next while it rests. */
const between = 200;

declare global {
  /** Asked for instead of the next frame; see cli/build/mended-library.js. */
  var titrebookNextFrame: ((draw: FrameRequestCallback) => number) | undefined;
}

/** What of a page this needs. */
export type Page = Pick<
  Window,
  "requestAnimationFrame" | "setTimeout" | "clearTimeout" | "addEventListener"
> & { readonly performance: Pick<Performance, "now"> };

/** Returns what asks for the next frame, now or after a rest. All that rest wake together. */
export function framesOf(page: Page): (draw: FrameRequestCallback) => number {
  let stirred = page.performance.now();
  let resting: FrameRequestCallback[] = [];
  let rest: number | undefined;
  const wake = () => {
    for (const draw of resting) page.requestAnimationFrame(draw);
    resting = [];
    page.clearTimeout(rest);
    rest = undefined;
  };
  const stir = () => {
    stirred = page.performance.now();
    if (rest !== undefined) wake();
  };
  for (const each of stirs) page.addEventListener(each, stir, { capture: true, passive: true });
  return (draw) => {
    if (page.performance.now() - stirred < awake) return page.requestAnimationFrame(draw);
    resting.push(draw);
    rest ??= page.setTimeout(wake, between);
    // not to be taken back: what has nothing to draw any more draws nothing
    return 0;
  };
}

export function restWhenIdle(): void {
  globalThis.titrebookNextFrame = framesOf(window);
}
