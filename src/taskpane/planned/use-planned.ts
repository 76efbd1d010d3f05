/** Plans whenever what is to be written changes; carries the plan out when asked. */
import { useCallback, useEffect, useRef, useState } from "react";
import type { Confirmed, Plan, RecordOutcome, Refusal } from "../../workbook/planning/plan";
import type { RowChoice } from "../../workbook/planning/record/target-row";
import { unexpected } from "../unexpected";
import { useWorkbookTurn } from "../workbook-turn";
import {
  afterPlan,
  afterWriting,
  type Carrying,
  confirmedOf,
  looking,
  mayGoOn,
  refusedWith,
} from "./carrying";

/** Typing asks for a new plan, but not at every letter. */
const pauseBeforePlan = 300;
/** How long the add-in's functions are given to answer, each time. */
const pauseForFunctions = 400;

const wait = (milliseconds: number): Promise<void> =>
  new Promise((done) => setTimeout(done, milliseconds));

const broken =
  "The spreadsheet program broke off, and what it wrote is not known: look at the sheet, then try again.";

const notPlanned =
  "The spreadsheet program broke off while it was read. Nothing was written here: try again in a moment.";

export interface Change {
  /** What is to be written, as text: equal texts need no new plan. Undefined: nothing yet. */
  readonly key: string | undefined;
  plan(choice: RowChoice): Promise<Plan | Refusal>;
  write(
    confirmed: Confirmed,
    pause: () => Promise<void>,
    choice: RowChoice,
  ): Promise<RecordOutcome>;
  /** After writing: what else to say, in sentences. */
  written?(outcome: Extract<RecordOutcome, { kind: "recorded" }>): readonly string[];
}

export interface Planned {
  readonly carrying: Carrying;
  /** Something was pressed here: the focus moves to the next thing to press. */
  readonly isTried: boolean;
  readonly again: () => void;
  /** The row is occupied: take the next that is free. */
  readonly takeNextFree: () => void;
  readonly carryOut: (plan: Plan, agreed: readonly string[]) => Promise<void>;
}

export function usePlanned(change: Change): Planned {
  const [carrying, setCarrying] = useState<Carrying>(looking);
  const [isTried, setTried] = useState(false);
  const [choice, setChoice] = useState<RowChoice>("first");
  const [turn, setTurn] = useState(0);
  /** Of all the plans and writings that were begun, the one that may still say what came of it. */
  const latest = useRef(0);
  /** What the plan that is shown was made for. */
  const shownFor = useRef<string | undefined>(undefined);
  const isWriting = useRef(false);
  const { key } = change;
  const keyNow = useRef(key);
  keyNow.current = key;
  const workbook = useWorkbookTurn();
  const workbookNow = useRef(workbook);
  useEffect(() => {
    if (workbookNow.current === workbook) return;
    // what was planned for one workbook, or written there, is nothing to another
    workbookNow.current = workbook;
    shownFor.current = undefined;
    setTried(false);
    setChoice("first");
    if (!isWriting.current) setCarrying(looking);
  }, [workbook]);
  useEffect(() => {
    if (key === undefined || isWriting.current) return undefined;
    const mine = (latest.current += 1);
    const timer = setTimeout(() => {
      change
        .plan(choice)
        .then(afterPlan, (failure: unknown) => {
          unexpected(failure);
          return refusedWith(notPlanned);
        })
        .then(
          (found) => {
            if (latest.current !== mine) return;
            shownFor.current = key;
            setCarrying(found);
          },
          () => undefined,
        );
    }, pauseBeforePlan);
    return () => {
      if (latest.current === mine) latest.current += 1;
      clearTimeout(timer);
    };
    // the key stands for the change: a new object of the same figures needs no new plan
  }, [key, choice, turn, workbook]);

  const again = useCallback(() => {
    setCarrying(looking);
    setTurn((count) => count + 1);
  }, []);
  const takeNextFree = useCallback(() => {
    setTried(true);
    setChoice("next free");
    again();
  }, [again]);

  /** The plan to carry out: what was typed since the one that is shown counts too. */
  const current = async (shown: Plan, agreed: readonly string[]): Promise<Plan | Carrying> => {
    if (shownFor.current === key) return shown;
    const found = await change.plan(choice);
    shownFor.current = key;
    if (found.kind === "refused") return afterPlan(found);
    return mayGoOn(shown, found, agreed) ? found : afterPlan(found);
  };

  const carryOut = async (plan: Plan, agreed: readonly string[]): Promise<void> => {
    // a plan that is still to come must not take the place of what this comes to
    latest.current += 1;
    isWriting.current = true;
    setTried(true);
    setCarrying({ state: "writing", plan });
    const begunIn = workbookNow.current;
    let after: Carrying;
    try {
      const now = await current(plan, agreed);
      if ("state" in now) after = now;
      else {
        const confirmed = confirmedOf(now, agreed);
        const outcome = await change.write(confirmed, () => wait(pauseForFunctions), choice);
        after = afterWriting(outcome);
        const more = outcome.kind === "recorded" ? (change.written?.(outcome) ?? []) : [];
        if (after.state === "written") {
          after = { ...after, differences: [...after.differences, ...more] };
        }
      }
    } catch (failure) {
      unexpected(failure);
      after = { state: "not known", sentence: broken };
    }
    isWriting.current = false;
    if (workbookNow.current !== begunIn) {
      again();
      return;
    }
    setCarrying(after);
    // something may have been typed while it was written
    if (after.state !== "written" && keyNow.current !== key) setTurn((count) => count + 1);
  };
  return { carrying, isTried, again, takeNextFree, carryOut };
}
