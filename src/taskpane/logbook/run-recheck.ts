/** A re-check in slices, so that the page draws in between and can stop it. */
import { recheck, type Logbook } from "../../adopt/recheck/recheck";
import { unexpected } from "../unexpected";
import type { Action } from "./state";

/** One frame's worth of work. */
const slice = 12;
/** Progress is shown only when it takes longer than this. */
const patience = 500;

export interface Running {
  stop(): void;
}

const later = (): Promise<void> =>
  new Promise((done) => {
    setTimeout(done, 0);
  });

/** @param clock milliseconds */
export function runRecheck(
  logbooks: readonly Logbook[],
  act: (action: Action) => void,
  clock: () => number = () => performance.now(),
): Running {
  let isStopped = false;
  const work = async (): Promise<void> => {
    const steps = recheck(logbooks);
    const began = clock();
    let shown = began;
    for (;;) {
      const from = clock();
      let step = steps.next();
      while (!step.done && clock() - from < slice) step = steps.next();
      if (step.done) {
        act({ do: "checked", report: step.value });
        return;
      }
      if (clock() - began > patience && clock() - shown > 100) {
        shown = clock();
        act({ do: "checking", ...step.value });
      }
      await later();
      if (isStopped) {
        act({ do: "stopped" });
        return;
      }
    }
  };
  work().catch((failure: unknown) => {
    unexpected(failure);
    act({ do: "broke-off" });
  });
  return {
    stop() {
      isStopped = true;
    },
  };
}
