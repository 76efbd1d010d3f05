/** One titration: where one is, the step itself, and the way on. */
import { Button } from "@fluentui/react-components";
import type { Host } from "../../../sheet/port";
import { StepHeading } from "../../stepped/step-heading";
import { EnterGoesOn, WayOn } from "../../stepped/way-on";
import { Cautions } from "../../widgets/cautions";
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

export function Steps({ host, takesFocus, onLots, onNew, onRecorded }: StepsProps) {
  const { view, act } = useDesk();
  const { step, words } = view.draft;
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
      <header className="task-top">
        <p className="task-of">{words.lot.trim() || "New titration"}</p>
        <Button onClick={onLots}>Lots</Button>
      </header>
      <StepBar onGo={go} />
      <StepHeading name={stepNames[step]} at={at} of={stepIds.length} takesFocus={takesFocus} />
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
      <WayOn steps={stepIds} names={stepNames} here={step} onGo={go} />
      <Cautions work={step === "titrant" ? "making titrant" : "titrating"} />
    </div>
  );
}
