/** Record: the exact cells first, then one row of Batches. */
import { Button } from "@fluentui/react-components";
import type { Host } from "../../../sheet/port";
import { planBatch, recordBatch } from "../../../workbook/planning/record/record-batch";
import type { BatchRecord } from "../../../workbook/record/batch-record";
import { PlannedChange } from "../../planned/planned-change";
import { type Change, usePlanned } from "../../planned/use-planned";
import { ToTask } from "../../to-task";
import { Say } from "../../widgets/say";
import type { StepId } from "../batch";
import { atOdds, batchOf, recordOf } from "../record";
import { forWeighOut } from "../wants";
import { useDesk, useMark, Wants, Words } from "./desk";
import { TooMuch } from "./too-much";

export interface RecordStepProps {
  readonly host: Host;
  readonly today: string;
  readonly onGo: (step: StepId) => void;
  readonly onNew: () => void;
}

/** Nothing is planned while the row is incomplete, so nothing can be written either. */
const rowOf = (record: BatchRecord | undefined): BatchRecord => {
  if (record === undefined) throw new Error("recording before the row is complete");
  return record;
};

function Row({ host, today, onNew }: Omit<RecordStepProps, "onGo">) {
  const { view, act } = useDesk();
  const inMark = useMark();
  const record = recordOf(view, today);
  const change: Change = {
    key: record && JSON.stringify(record),
    plan: (choice) => planBatch(host, rowOf(record), choice),
    write: (confirmed, pause, choice) => recordBatch(host, rowOf(record), confirmed, pause, choice),
    written: (outcome) => {
      act({ do: "recorded" });
      return atOdds(outcome, view);
    },
  };
  const planned = usePlanned(change);
  return (
    <PlannedChange
      planned={planned}
      command={view.draft.isRecorded ? "Record once more" : "Record this batch"}
      busyWords="Writing the row."
      inMark={inMark}
      undoTakes="takes the row back"
      afterwards={
        <>
          <p>The bench card has the steps, and asks afterwards how it went. It prints, too.</p>
          <Button size="large" appearance="primary" className="wide" autoFocus onClick={onNew}>
            Next batch
          </Button>
          <ToTask task="card" about={view.draft.words.batch.trim()} words="Bench card" />
        </>
      }
    />
  );
}

export function RecordStep({ host, today, onGo, onNew }: RecordStepProps) {
  const { view } = useDesk();
  const { wants } = view;
  if (forWeighOut(wants).length === 0 && batchOf(view, today) === undefined) {
    return (
      <>
        <Say tone="check">There is no dose to record: see Weigh-out.</Say>
        <Button
          size="large"
          className="wide"
          onClick={() => {
            onGo("weigh-out");
          }}
        >
          Go to Weigh-out
        </Button>
      </>
    );
  }
  return (
    <>
      {wants.length > 0 ? (
        <Wants title="Before it can be recorded" wants={wants} onGo={onGo} isFirst />
      ) : (
        <>
          <TooMuch />
          <Words field="note" />
          <Row host={host} today={today} onNew={onNew} />
          {view.draft.isRecorded ? (
            <ToTask
              task="fuel"
              about={view.draft.words.batch.trim()}
              given={{ base: view.draft.picked.base }}
              words="Test its fuel"
            />
          ) : null}
        </>
      )}
    </>
  );
}
