/** Record: the exact cells first, then one row in the logbook. The only place that writes to it. */
import { Button } from "@fluentui/react-components";
import { isProblem } from "../../../core/problem/problem";
import type { Host } from "../../../sheet/port";
import { planTitration, recordTitration } from "../../../workbook/planning/record/record-titration";
import type { TitrationRecord } from "../../../workbook/record/titration-record";
import { PlannedChange } from "../../planned/planned-change";
import { type Change, usePlanned } from "../../planned/use-planned";
import { ToTask } from "../../to-task";
import { atOdds } from "../at-odds";
import type { Draft } from "../draft";
import { keptTitrations, rowWordIds, type StepId } from "../titration";
import { keepsFromRecording } from "../progress";
import { recordOf } from "../record";
import { useDesk, useMark, Wants, Words } from "./desk";

export interface RecordStepProps {
  readonly host: Host;
  readonly onGo: (step: StepId) => void;
  readonly onRecorded: (draft: Draft) => void;
  readonly onNew: () => void;
}

/** Nothing is planned while the row is incomplete, so nothing can be written either. */
const rowOf = (record: TitrationRecord | undefined): TitrationRecord => {
  if (record === undefined) throw new Error("recording before the row is complete");
  return record;
};

export function RecordStep({ host, onGo, onRecorded, onNew }: RecordStepProps) {
  const { view } = useDesk();
  const inMark = useMark();
  const { draft, working } = view;
  const record = recordOf(view);
  const change: Change = {
    key: record && JSON.stringify(record),
    plan: (choice) => planTitration(host, rowOf(record), choice),
    write: (confirmed, pause, choice) =>
      recordTitration(host, rowOf(record), confirmed, pause, choice),
    written: (outcome) => {
      onRecorded(draft);
      const { acid } = working;
      if (acid === undefined || isProblem(acid)) return [];
      return atOdds(outcome, acid.ffa.toNumber());
    },
  };
  const planned = usePlanned(change);

  if (record === undefined) {
    const wants = keepsFromRecording(view.wants);
    return <Wants title="Before it can be recorded" wants={wants} onGo={onGo} isFirst />;
  }
  return (
    <>
      {planned.carrying.state === "written"
        ? null
        : rowWordIds.map((field) => <Words key={field} field={field} />)}
      <PlannedChange
        planned={planned}
        command={draft.isRecorded ? "Record once more" : "Record this titration"}
        busyWords="Writing the row."
        inMark={inMark}
        undoTakes="takes the row back"
        afterwards={
          <>
            <Button size="large" appearance="primary" className="wide" autoFocus onClick={onNew}>
              Next lot
            </Button>
            <ToTask task="batch" about={draft.words.lot.trim()} words="Batch of this lot" />
            <p className="soft">
              Titrant and blanks stay. This one is kept under {keptTitrations}.
            </p>
          </>
        }
      />
    </>
  );
}
