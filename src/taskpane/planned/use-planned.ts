/** Plans whenever what is to be written changes; carries the plan out when asked. */
import { useCallback, useEffect, useState } from "react";
import type { Confirmed, Plan, RecordOutcome, Refusal } from "../../workbook/planning/plan";
import { afterPlan, afterWriting, type Carrying, confirmedOf, looking } from "./carrying";

/** Typing asks for a new plan, but not at every letter. */
const pauseBeforePlan = 300;
/** How long the add-in's functions are given to answer, each time. */
const pauseForFunctions = 400;

const wait = (milliseconds: number): Promise<void> =>
  new Promise((done) => setTimeout(done, milliseconds));

const broken =
  "The spreadsheet program broke off, and what it wrote is not known: look at the sheet, then try again.";

export interface Change {
  /** What is to be written, as text: equal texts need no new plan. Undefined: nothing yet. */
  readonly key: string | undefined;
  plan(): Promise<Plan | Refusal>;
  write(confirmed: Confirmed, pause: () => Promise<void>): Promise<RecordOutcome>;
  /** After writing: what else to say, in sentences. */
  written?(outcome: Extract<RecordOutcome, { kind: "recorded" }>): readonly string[];
}

export interface Planned {
  readonly carrying: Carrying;
  /** Something was pressed here: the focus moves to the next thing to press. */
  readonly isTried: boolean;
  readonly again: () => void;
  readonly carryOut: (plan: Plan, agreed: readonly string[]) => Promise<void>;
}

export function usePlanned(change: Change): Planned {
  const [carrying, setCarrying] = useState<Carrying>(looking);
  const [isTried, setTried] = useState(false);
  const [turn, setTurn] = useState(0);
  const { key } = change;
  useEffect(() => {
    if (key === undefined) return undefined;
    let isCurrent = true;
    const timer = setTimeout(() => {
      change
        .plan()
        .then(afterPlan, (): Carrying => ({ state: "refused", sentence: broken }))
        .then(
          (found) => {
            if (isCurrent) setCarrying(found);
          },
          () => undefined,
        );
    }, pauseBeforePlan);
    return () => {
      isCurrent = false;
      clearTimeout(timer);
    };
    // the key stands for the change: a new object of the same figures needs no new plan
  }, [key, turn]);

  const again = useCallback(() => {
    setCarrying(looking);
    setTurn((count) => count + 1);
  }, []);

  const carryOut = async (plan: Plan, agreed: readonly string[]): Promise<void> => {
    setTried(true);
    setCarrying({ state: "writing", plan });
    try {
      const outcome = await change.write(confirmedOf(plan, agreed), () => wait(pauseForFunctions));
      const after = afterWriting(outcome);
      const more = outcome.kind === "recorded" ? (change.written?.(outcome) ?? []) : [];
      setCarrying(
        after.state === "written"
          ? { ...after, differences: [...after.differences, ...more] }
          : after,
      );
    } catch {
      setCarrying({ state: "not known", sentence: broken });
    }
  };
  return { carrying, isTried, again, carryOut };
}
