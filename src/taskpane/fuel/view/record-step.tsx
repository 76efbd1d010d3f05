/** The fuel as a row of `Fuel`: shown before it is written, one undo. */
import { Button } from "@fluentui/react-components";
import type { Host } from "../../../sheet/port";
import { planFuel, recordFuel } from "../../../workbook/planning/record/record-fuel";
import { PlannedChange } from "../../planned/planned-change";
import { type Change, usePlanned } from "../../planned/use-planned";
import type { StepId } from "../fuel";
import { useDesk, useMark, Wants, Words } from "./desk";

interface RowProps {
  readonly host: Host;
  readonly onNew: () => void;
}

function Row({ host, onNew }: RowProps) {
  const { view, act } = useDesk();
  const { record } = view;
  const change: Change = {
    key: JSON.stringify(record),
    plan: (choice) => planFuel(host, record, choice),
    write: (confirmed, pause, choice) => recordFuel(host, record, confirmed, pause, choice),
    written: () => {
      act({ do: "recorded" });
      return [];
    },
  };
  return (
    <PlannedChange
      planned={usePlanned(change)}
      command={view.draft.isRecorded ? "Record once more" : "Record this fuel"}
      busyWords="Writing the row."
      inMark={useMark()}
      undoTakes="takes the row back"
      afterwards={
        <Button size="large" appearance="primary" className="wide" autoFocus onClick={onNew}>
          Next fuel
        </Button>
      }
    />
  );
}

export function RecordStep({ onGo, ...row }: RowProps & { onGo: (step: StepId) => void }) {
  const { view } = useDesk();
  if (view.wants.length > 0) {
    return <Wants title="Before it can be recorded" wants={view.wants} onGo={onGo} />;
  }
  return (
    <>
      <Words field="note" />
      <Row {...row} />
    </>
  );
}
