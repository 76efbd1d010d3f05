/** One titration: where one is, the step itself, and the way on. */
import { Button } from "@fluentui/react-components";
import { type FormEvent, type ReactNode, useEffect, useRef } from "react";
import type { Host } from "../../../host/port";
import { cautions } from "../../../core/batch/cautions";
import { type Draft, stepIds, type StepId } from "../draft";
import { stepNames } from "../names";
import { BlankStep } from "./blank-step";
import { useDesk } from "./desk";
import { OilStep } from "./oil-step";
import { RecordStep } from "./record-step";
import { ReplicatesStep } from "./replicates-step";
import { ResultStep } from "./result-step";
import { StepBar } from "./step-bar";
import { TitrantStep } from "./titrant-step";

export interface StepsProps {
  readonly host: Host;
  /** Opened by hand: then its heading takes the focus. */
  readonly takesFocus: boolean;
  readonly onLots: () => void;
  readonly onNew: () => void;
  readonly onRecorded: (draft: Draft) => void;
}

/** Enter goes on, where Enter has nothing else to do. */
function EnterGoesOn({ onEnter, children }: { onEnter: () => void; children: ReactNode }) {
  const submitted = (event: FormEvent): void => {
    event.preventDefault();
    onEnter();
  };
  return (
    <form onSubmit={submitted} noValidate>
      {children}
      <button type="submit" className="unseen" tabIndex={-1} aria-hidden="true" />
    </form>
  );
}

function WayOn({ step, onGo }: { step: StepId; onGo: (step: StepId) => void }) {
  const at = stepIds.indexOf(step);
  const back = stepIds[at - 1];
  const next = stepIds[at + 1];
  return (
    <div className="way-on">
      {back === undefined ? null : (
        <Button
          size="large"
          onClick={() => {
            onGo(back);
          }}
        >
          Back
        </Button>
      )}
      {next === undefined ? null : (
        <Button
          size="large"
          appearance="primary"
          onClick={() => {
            onGo(next);
          }}
        >
          Next: {stepNames[next]}
        </Button>
      )}
    </div>
  );
}

export function Steps({ host, takesFocus, onLots, onNew, onRecorded }: StepsProps) {
  const { view, act } = useDesk();
  const { step, words } = view.draft;
  const heading = useRef<HTMLHeadingElement>(null);
  const shown = useRef<StepId | undefined>(undefined);
  useEffect(() => {
    // a pane that opens leaves the focus in the spreadsheet; each later step is announced
    if (shown.current === undefined ? takesFocus : shown.current !== step) {
      heading.current?.focus();
      heading.current?.scrollIntoView({ block: "nearest" });
    }
    shown.current = step;
  }, [step, takesFocus]);

  const go = (to: StepId): void => {
    act({ do: "go", step: to });
  };
  const at = stepIds.indexOf(step);
  const onEnter = (): void => {
    const next = stepIds[at + 1];
    if (next !== undefined) go(next);
  };
  return (
    <div className="task titrate">
      <header className="titrate-top">
        <p className="titrate-lot">{words.lot.trim() || "New titration"}</p>
        <Button onClick={onLots}>Lots</Button>
      </header>
      <StepBar onGo={go} />
      <h2 ref={heading} tabIndex={-1}>
        {stepNames[step]} <span className="soft">{at + 1} of 6</span>
      </h2>
      {step === "titrant" ? (
        <EnterGoesOn onEnter={onEnter}>
          <TitrantStep />
        </EnterGoesOn>
      ) : null}
      {step === "oil" ? (
        <EnterGoesOn onEnter={onEnter}>
          <OilStep />
        </EnterGoesOn>
      ) : null}
      {step === "blank" ? <BlankStep /> : null}
      {step === "replicates" ? <ReplicatesStep /> : null}
      {step === "result" ? <ResultStep onGo={go} /> : null}
      {step === "record" ? (
        <RecordStep host={host} onGo={go} onRecorded={onRecorded} onNew={onNew} />
      ) : null}
      <WayOn step={step} onGo={go} />
      {step === "result" || step === "record" ? <p className="caution">{cautions[0]}</p> : null}
    </div>
  );
}
