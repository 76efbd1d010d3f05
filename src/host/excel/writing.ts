/**
 * Steps, all or none. One request without an undo group is one undo record, so all of them go in one.
 * Where it fails, what was done is taken back; and should a decoration have been the cause, what counts
 * is written without, and each kind of decoration tried by itself.
 */
import {
  type Decoration,
  type Fault,
  fault,
  type FaultCode,
  isFault,
  type Shortfall,
  type Step,
} from "../../sheet/port";
import { requestsOf } from "./requests";
import { run } from "./run";
import { doStep, isDecoration } from "./steps";
import { goBack, wayBack } from "./way-back";

/** The whole request was refused, and nothing done. */
const refusedWhole: readonly FaultCode[] = ["being-edited", "not-undoable"];

/** With these a decoration may have been what failed. */
const mayBeDecoration: readonly FaultCode[] = ["failed", "not-offered"];

/** One undo record for each request. */
const send = (requests: readonly (readonly Step[])[]): Promise<undefined | Fault> =>
  run(async (context) => {
    for (const steps of requests) {
      for (const step of steps) doStep(context, step);
      await context.sync();
    }
    return undefined;
  });

/** Does the steps, or goes back. */
async function done(steps: readonly Step[]): Promise<{ readonly requests: number } | Fault> {
  const way = await run((context) => wayBack(context, steps));
  if (isFault(way)) return way;
  const requests = requestsOf(steps);
  const failed = await send(requests);
  if (!failed) return { requests: requests.length };
  if (requests.length === 1 && refusedWhole.includes(failed.code)) return failed;
  const back = await run((context) => goBack(context, way));
  return isFault(back) ? fault("half-done") : failed;
}

async function decorated(steps: readonly Step[]): Promise<Shortfall> {
  const decorations = steps.filter(isDecoration);
  const missing: Decoration[] = [];
  for (const kind of new Set(decorations.map((step) => step.do))) {
    const outcome = await done(decorations.filter((step) => step.do === kind));
    if (isFault(outcome)) missing.push(kind);
  }
  return { kind: "shortfall", missing };
}

export async function allOrNothing(steps: readonly Step[]): Promise<undefined | Shortfall | Fault> {
  const counts = steps.filter((step) => !isDecoration(step));
  // what counts first: should it fail, no decoration is left behind
  const first = await done([...counts, ...steps.filter(isDecoration)]);
  if (!isFault(first)) {
    return first.requests === 1 ? undefined : { kind: "shortfall", missing: [] };
  }
  if (!mayBeDecoration.includes(first.code)) return first;
  if (counts.length === 0 || counts.length === steps.length) return first;
  const again = await done(counts);
  return isFault(again) ? again : decorated(steps);
}
