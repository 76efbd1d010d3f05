/**
 * The logbook task: understand the logbook that is there, add columns beside it, re-check every row.
 * Nothing is used before somebody has seen it, and nothing is written that was not shown.
 */
import "../widgets/widgets.css";
import "../task.css";
import "./logbook.css";
import { type ReactNode, useEffect, useReducer } from "react";
import type { TaskMemory } from "../drafts/task-memory";
import type { Host } from "../../sheet/port";
import type { StepState } from "../stepped/step-bar";
import { TaskShell } from "../stepped/task-shell";
import { unexpected } from "../unexpected";
import { Say } from "../widgets/say";
import { decimalMarkOf, withMark } from "../widgets/typed-number";
import { readLogbooks } from "./read-logbooks";
import {
  agreedTables,
  firstState,
  type LogbookState,
  reduce,
  stepNames,
  type StepId,
} from "./state";
import { AddStep } from "./view/add-step";
import { CheckStep } from "./view/check-step";
import { LookAgain } from "./view/look-again";
import { RecogniseStep } from "./view/recognise-step";
import { useLearned } from "./use-learned";
import { wantsAgreeing } from "./wants-agreeing";

export interface LogbookTaskProps {
  readonly host: Host;
  /** The headings of one workbook are known in the next. */
  readonly learned: TaskMemory;
  readonly locale: string;
}

function stateOf(step: StepId, state: LogbookState): StepState {
  const agreed = agreedTables(state).length;
  if (step === "check") return state.check.state === "done" ? "done" : "to do";
  if (step === "add") return "to do";
  return agreed === 0 ? "to do" : agreed < state.tables.length ? "part done" : "done";
}

export function LogbookTask({ host, learned, locale }: LogbookTaskProps) {
  const [state, act] = useReducer(reduce, firstState);
  const { step, looking } = state;
  const isLooking = looking.state === "looking";
  const learnedOf = useLearned(learned, state);
  useEffect(() => {
    if (!isLooking) return undefined;
    let isCurrent = true;
    readLogbooks(host)
      .then(learnedOf)
      .then(
        (found) => {
          if (isCurrent) act(found);
        },
        (failure: unknown) => {
          unexpected(failure);
          if (isCurrent)
            act({
              do: "failed",
              sentence: "The workbook could not be read. Try again in a moment.",
            });
        },
      );
    return () => {
      isCurrent = false;
    };
  }, [host, isLooking, learnedOf]);
  const isAdding = step === "add" && looking.state === "found";
  useEffect(() => {
    if (!isAdding) return undefined;
    let isCurrent = true;
    // rows may have been added since the workbook was looked through
    readLogbooks(host).then((found) => {
      if (isCurrent && found.do === "found") act({ ...found, do: "refreshed" });
    }, unexpected);
    return () => {
      isCurrent = false;
    };
  }, [host, isAdding]);
  const mark = decimalMarkOf(locale);
  const inMark = (text: string): string => withMark(text, mark);
  const go = (to: StepId): void => {
    act({ do: "go", step: to });
  };
  const props = { host, state, act, mark, inMark };
  const found = (part: ReactNode) => (
    <>
      <div role="status">{isLooking ? "Looking through the workbook." : null}</div>
      {looking.state === "failed" ? (
        <>
          <Say tone="check">{looking.sentence}</Say>
          <LookAgain act={act} />
        </>
      ) : null}
      {looking.state === "found" ? part : null}
    </>
  );
  return (
    <TaskShell<StepId>
      label="Steps of the logbook"
      names={stepNames}
      look="logbook"
      here={step}
      stateOf={(id) => stateOf(id, state)}
      onGo={go}
      waits={step === "recognise" && looking.state === "found" ? wantsAgreeing(state) : undefined}
      parts={{
        recognise: () => found(<RecogniseStep {...props} />),
        add: () => found(<AddStep {...props} />),
        check: () => found(<CheckStep {...props} />),
      }}
    />
  );
}
