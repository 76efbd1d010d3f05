/** Record: the exact cells first, then one row in the logbook. The only place that writes to it. */
import { Button } from "@fluentui/react-components";
import { useCallback, useEffect, useState } from "react";
import type { Host } from "../../../host/port";
import { planTitration, recordTitration } from "../../../workbook/planning/record-titration";
import type { Plan } from "../../../workbook/planning/plan";
import type { TitrationRecord } from "../../../workbook/record/titration-record";
import { isProblem } from "../../../core/problem/problem";
import { Say } from "../../widgets/say";
import { WordField } from "../../widgets/word-field";
import type { Draft, StepId } from "../draft";
import { keepsFromRecording } from "../progress";
import { recordOf } from "../record";
import { afterPlan, afterRecord, atOdds, confirmedOf, looking, type Recording } from "../recorder";
import { useDesk, useMark } from "./desk";
import { PlanView } from "./plan-view";
import { Wants } from "./wants";

/** Typing a note asks for a new plan, but not at every letter. */
const pauseBeforePlan = 300;
/** How long the add-in's functions are given to answer, each time. */
const pauseForFunctions = 400;

const wait = (milliseconds: number): Promise<void> =>
  new Promise((done) => setTimeout(done, milliseconds));

const broken =
  "The spreadsheet program broke off: nothing more is known. Look at the sheet, then try again.";

/** The record as text: equal texts need no new plan. */
const keyOf = (record: TitrationRecord | undefined): string => JSON.stringify(record ?? null);

export interface RecordStepProps {
  readonly host: Host;
  readonly onGo: (step: StepId) => void;
  readonly onRecorded: (draft: Draft) => void;
  readonly onNew: () => void;
}

/** Plans whenever the record changes; carries the plan out when asked. */
function useRecording(host: Host, record: TitrationRecord | undefined) {
  const [recording, setRecording] = useState<Recording>(looking);
  const [turn, setTurn] = useState(0);
  const key = keyOf(record);
  useEffect(() => {
    if (record === undefined) return undefined;
    let isCurrent = true;
    const timer = setTimeout(() => {
      planTitration(host, record)
        .then(afterPlan, (): Recording => ({ state: "refused", sentence: broken }))
        .then(
          (found) => {
            if (isCurrent) setRecording(found);
          },
          () => undefined,
        );
    }, pauseBeforePlan);
    return () => {
      isCurrent = false;
      clearTimeout(timer);
    };
    // the key stands for the record: a new object of the same figures needs no new plan
  }, [host, key, turn]);
  const again = useCallback(() => {
    setRecording(looking);
    setTurn((count) => count + 1);
  }, []);
  return { recording, setRecording, again };
}

function Done({ recording, onNew }: { recording: Recording; onNew: () => void }) {
  if (recording.state !== "recorded") return null;
  return (
    <>
      {recording.differences.map((sentence) => (
        <Say key={sentence} tone="mind">
          {sentence}
        </Say>
      ))}
      <p>Undo in the spreadsheet takes the row back; the titration stays here, under Lots.</p>
      <Button size="large" appearance="primary" className="wide" autoFocus onClick={onNew}>
        Next titration
      </Button>
    </>
  );
}

export function RecordStep({ host, onGo, onRecorded, onNew }: RecordStepProps) {
  const { view, act } = useDesk();
  const inMark = useMark();
  const { draft, working } = view;
  const record = recordOf(view);
  // the focus moves to the next thing to press, once something was pressed here
  const [isTried, setTried] = useState(false);
  const { recording, setRecording, again } = useRecording(host, record);

  const carryOut = async (plan: Plan, agreed: readonly string[]): Promise<void> => {
    if (record === undefined) return;
    setTried(true);
    setRecording({ state: "writing", plan });
    try {
      const pause = () => wait(pauseForFunctions);
      const outcome = await recordTitration(host, record, confirmedOf(plan, agreed), pause);
      const after = afterRecord(outcome);
      const { acid } = working;
      const odds =
        acid === undefined || isProblem(acid) ? undefined : atOdds(outcome, acid.ffa.toNumber());
      if (outcome.kind === "recorded") onRecorded(draft);
      setRecording(
        after.state === "recorded" && odds !== undefined
          ? { ...after, differences: [...after.differences, odds] }
          : after,
      );
    } catch {
      setRecording({ state: "not known", sentence: broken });
    }
  };

  if (record === undefined) {
    const wants = keepsFromRecording(view.wants);
    return <Wants title="Still wanted for the row" wants={wants} onGo={onGo} />;
  }
  const isDone = recording.state === "recorded";
  const said = "sentence" in recording ? recording.sentence : undefined;
  return (
    <>
      {isDone ? null : (
        <>
          <WordField
            label="Who titrated"
            value={draft.words.operator}
            onText={(operator) => {
              act({ do: "write", words: { operator } });
            }}
          />
          <WordField
            label="Note"
            value={draft.words.note}
            onText={(note) => {
              act({ do: "write", words: { note } });
            }}
          />
        </>
      )}
      <div role="status" className="outcome">
        {recording.state === "looking" ? "Looking at the workbook." : null}
        {recording.state === "writing" ? "Writing the row." : null}
        {said === undefined ? null : <Say tone={isDone ? "done" : "mind"}>{inMark(said)}</Say>}
      </div>
      {recording.state === "refused" || recording.state === "not known" ? (
        <Button size="large" className="wide" autoFocus={isTried} onClick={again}>
          Look again
        </Button>
      ) : null}
      {recording.state === "planned" || recording.state === "writing" ? (
        <PlanView
          key={recording.plan.fingerprint}
          plan={recording.plan}
          isBusy={recording.state === "writing"}
          isAgain={draft.isRecorded}
          onRecord={(agreed) => void carryOut(recording.plan, agreed)}
        />
      ) : null}
      <Done recording={recording} onNew={onNew} />
    </>
  );
}
