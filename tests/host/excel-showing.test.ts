import { afterEach, describe, expect, it } from "vitest";
import { paneShowing } from "../../src/host/excel/showing";

/** A page that is seen or not, and a program that says whether its pane is open. */
function opened() {
  const page = Object.assign(new EventTarget(), { visibilityState: "visible" });
  let tell: ((told: { visibilityMode: string }) => void) | undefined;
  const addin = {
    onVisibilityModeChanged: (heard: typeof tell) => {
      tell = heard;
      return Promise.resolve(() => Promise.resolve());
    },
  };
  Object.assign(globalThis, {
    Office: { addin, VisibilityMode: { hidden: "Hidden", taskpane: "Taskpane" } },
  });
  return {
    page,
    see: (visibilityState: string) => {
      page.visibilityState = visibilityState;
      page.dispatchEvent(new Event("visibilitychange"));
    },
    mode: (visibilityMode: string) => tell?.({ visibilityMode }),
  };
}

describe("whether the pane is seen", () => {
  afterEach(() => {
    Reflect.deleteProperty(globalThis, "Office");
  });

  it("goes by its page, and by the program where it says that the pane is closed", async () => {
    const { page, see, mode } = opened();
    const showing = paneShowing(page as unknown as Document);
    await Promise.resolve();
    let shown = 0;
    const stop = showing.watch(() => (shown += 1));
    expect(showing.isShown()).toBe(true);
    see("hidden");
    expect([showing.isShown(), shown]).toEqual([false, 0]);
    see("visible");
    expect([showing.isShown(), shown]).toEqual([true, 1]);
    mode("Hidden");
    expect([showing.isShown(), shown]).toEqual([false, 1]);
    mode("Taskpane");
    expect([showing.isShown(), shown]).toEqual([true, 2]);
    stop();
    see("hidden");
    see("visible");
    expect(shown).toBe(2);
  });

  it("goes by its page alone in a program that does not say", async () => {
    const { page, see } = opened();
    Reflect.deleteProperty(globalThis, "Office");
    const showing = paneShowing(page as unknown as Document);
    await Promise.resolve();
    await Promise.resolve();
    see("hidden");
    expect(showing.isShown()).toBe(false);
    see("visible");
    expect(showing.isShown()).toBe(true);
  });
});
