/**
 * The batch task: from recorded lots to a weigh-out sheet and a row of Batches. What is typed is kept by
 * the browser; the workbook is written by Record and by the sheet to print alone.
 */
import "../widgets/widgets.css";
import "../task.css";
import "./batch.css";
import { Button } from "@fluentui/react-components";
import { useRef } from "react";
import { HeldElsewhere } from "../drafts/held-elsewhere";
import { type Keeping, useKeptDraft } from "../drafts/use-kept-draft";
import { StepBar } from "../stepped/step-bar";
import { StepHeading } from "../stepped/step-heading";
import { EnterGoesOn, WayOn } from "../stepped/way-on";
import type { TaskProps } from "../tasks";
import { Cautions } from "../widgets/cautions";
import { localDay } from "../widgets/day";
import { Say } from "../widgets/say";
import { decimalMarkOf } from "../widgets/typed-number";
import { type Draft, newDraft, stepIds, type StepId } from "./draft";
import { stepNames, workOf } from "./names";
import { type Action, reduce } from "./reducer";
import { draftFrom } from "./stored";
import { type Lots, useLots } from "../lots/use-lots";
import { DeskProvider } from "./view/desk";
import { LyeStep } from "./view/lye-step";
import { MethanolStep } from "./view/methanol-step";
import { NewBatch } from "./view/new-batch";
import { OilStep } from "./view/oil-step";
import { RecordStep } from "./view/record-step";
import { WeighOutStep } from "./view/weigh-out-step";
import { viewOf } from "./view-of";
import { stateOf } from "./wants";

export type BatchTaskProps = Pick<TaskProps, "host" | "memory" | "locale" | "clock">;

const machineClock = (): Date => new Date();

const keeping: Keeping<Draft, Action> = {
  task: "batch",
  from: draftFrom,
  reduce,
  isTyping: ({ do: what }) => what === "type" || what === "write" || what === "share",
};

function NoLots({ lots, onAgain }: { lots: Lots; onAgain: () => void }) {
  return (
    <div className="task">
      <h2>Batch</h2>
      <div role="status">
        {lots.state === "looking" ? <p>Looking for recorded lots.</p> : null}
        {lots.state === "refused" ? <Say tone="mind">{lots.sentence}</Say> : null}
        {lots.state === "none" ? (
          <Say tone="know">
            No lot is recorded yet. Titrate one and record it: a batch takes its acid value from the
            table Titrations.
          </Say>
        ) : null}
      </div>
      {lots.state === "looking" ? null : (
        <Button size="large" className="wide" onClick={onAgain}>
          Look again
        </Button>
      )}
    </div>
  );
}

export function BatchTask({ host, memory, locale, clock = machineClock }: BatchTaskProps) {
  const { lots, again } = useLots(host);
  const { draft, act, replace, isUnkept, held } = useKeptDraft(memory, keeping);
  /** Somebody has begun the next batch: the focus is theirs, in the pane. */
  const byHand = useRef(false);
  if (draft === undefined || lots.state !== "read") {
    return <NoLots lots={lots.state === "read" ? { state: "looking" } : lots} onAgain={again} />;
  }
  const view = viewOf(draft, decimalMarkOf(locale), lots.lots);
  const { step } = draft;
  const at = stepIds.indexOf(step);
  const go = (to: StepId): void => {
    act({ do: "go", step: to });
  };
  const onEnter = (): void => {
    const next = stepIds[at + 1];
    if (next !== undefined) go(next);
  };
  const steps = stepIds.map((id) => ({
    id,
    name: stepNames[id],
    state: stateOf(id, view, view.wants),
  }));
  const today = localDay(clock());
  const next = (): void => {
    byHand.current = true;
    replace(newDraft);
  };
  return (
    <DeskProvider value={{ view, act }}>
      <HeldElsewhere held={held}>
        <div className="task">
          {isUnkept ? (
            <Say tone="mind">
              This browser keeps nothing: record before you close the pane, or what you typed is
              lost.
            </Say>
          ) : null}
          <header className="task-top">
            <p className="task-of">{draft.words.batch.trim() || "Batch"}</p>
            <NewBatch onNew={next} />
          </header>
          <StepBar label="Steps of the batch" steps={steps} here={step} onGo={go} />
          <StepHeading
            name={stepNames[step]}
            at={at}
            of={stepIds.length}
            takesFocus={byHand.current}
          />
          {step === "record" ? (
            <RecordStep host={host} today={today} onGo={go} onNew={next} />
          ) : (
            <EnterGoesOn onEnter={onEnter}>
              {step === "oil" ? <OilStep /> : null}
              {step === "lye" ? <LyeStep /> : null}
              {step === "methanol" ? <MethanolStep /> : null}
              {step === "weigh-out" ? <WeighOutStep onGo={go} /> : null}
            </EnterGoesOn>
          )}
          <WayOn steps={stepIds} names={stepNames} here={step} onGo={go} />
          <Cautions work={workOf(step, view.working)} />
        </div>
      </HeldElsewhere>
    </DeskProvider>
  );
}
