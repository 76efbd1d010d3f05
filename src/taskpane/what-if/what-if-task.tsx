/**
 * The what-if task: batch sizes against acid values, assays, charges or bases. What is typed is kept by
 * the browser; the workbook is written by the last step alone.
 */
import "../widgets/widgets.css";
import "../task.css";
import "./what-if.css";
import { useState } from "react";
import { type Lots, useLots } from "../lots/use-lots";
import { HeldElsewhere } from "../drafts/held-elsewhere";
import { type Keeping, useKeptDraft } from "../drafts/use-kept-draft";
import { StepBar, type StepState } from "../stepped/step-bar";
import { StepHeading } from "../stepped/step-heading";
import { EnterGoesOn, WayOn } from "../stepped/way-on";
import type { TaskProps } from "../tasks";
import { Cautions } from "../widgets/cautions";
import { Say } from "../widgets/say";
import { decimalMarkOf } from "../widgets/typed-number";
import { type Draft, stepIds, type StepId } from "./draft";
import { stepNames } from "./names";
import { type Action, reduce } from "./reducer";
import { draftFrom } from "./stored";
import { CompareStep } from "./view/compare-step";
import { DeskProvider } from "./view/desk";
import { SizesStep } from "./view/sizes-step";
import { TableStep } from "./view/table-step";
import { WriteStep } from "./view/write-step";
import { textOf } from "./use-doses";
import { type View, viewOf } from "./view-of";

/** Undefined until it is known which lots there are. */
function recorded(lots: Lots): View["lots"] {
  if (lots.state === "looking") return undefined;
  return lots.state === "read" ? lots.lots : [];
}

const keeping: Keeping<Draft, Action> = {
  task: "what-if",
  from: draftFrom,
  reduce,
  isTyping: (action) => action.do === "type" || action.do === "list",
};

/** A step is done when nothing is wanted in it. The table is done when it can be shown. */
function stateOf(step: StepId, { working }: View, written: string): StepState {
  if (step === "write") {
    return working.question && textOf(working.question) === written ? "done" : "to do";
  }
  if (step === "table") return working.question ? "done" : "to do";
  return working.wants.some((want) => want.step === step) ? "to do" : "done";
}

export function WhatIfTask({ host, memory, locale }: TaskProps) {
  const { draft, act, isUnkept, held } = useKeptDraft(memory, keeping);
  const { lots } = useLots(host);
  /** The question whose table was written last. */
  const [written, setWritten] = useState("");
  if (draft === undefined)
    return (
      <p className="task" role="status">
        One moment.
      </p>
    );
  const view = viewOf(draft, decimalMarkOf(locale), recorded(lots));
  const { step } = draft;
  const at = stepIds.indexOf(step);
  const go = (to: StepId): void => {
    act({ do: "go", step: to });
  };
  const steps = stepIds.map((id) => ({
    id,
    name: stepNames[id],
    state: stateOf(id, view, written),
  }));
  return (
    <DeskProvider value={{ view, act }}>
      <HeldElsewhere held={held}>
        <div className="task">
          {isUnkept ? (
            <Say tone="mind">
              This browser keeps nothing: what you type here is gone when the pane closes.
            </Say>
          ) : null}
          <StepBar label="Steps of the what-if table" steps={steps} here={step} onGo={go} />
          <StepHeading name={stepNames[step]} at={at} of={stepIds.length} takesFocus={false} />
          {step === "write" ? (
            <WriteStep host={host} onGo={go} onWritten={setWritten} />
          ) : (
            <EnterGoesOn
              onEnter={() => {
                const next = stepIds[at + 1];
                if (next !== undefined) go(next);
              }}
            >
              {step === "sizes" ? <SizesStep /> : null}
              {step === "compare" ? <CompareStep /> : null}
              {step === "table" ? <TableStep onGo={go} /> : null}
            </EnterGoesOn>
          )}
          <WayOn steps={stepIds} names={stepNames} here={step} onGo={go} />
          {step === "table" || step === "write" ? <Cautions work="planning" /> : null}
        </div>
      </HeldElsewhere>
    </DeskProvider>
  );
}
