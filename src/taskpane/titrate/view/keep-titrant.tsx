/** Keep this titrant in Titrants: the exact cells first, then one row. */
import { Button } from "@fluentui/react-components";
import type { Host } from "../../../sheet/port";
import { planTitrant, recordTitrant } from "../../../workbook/planning/record/record-titrant";
import type { TitrantRecord } from "../../../workbook/record/titrant-record";
import { OnRequest } from "../../planned/on-request";
import { PlannedChange } from "../../planned/planned-change";
import { usePlanned } from "../../planned/use-planned";
import { titrantRecordOf, wantsOfKeeping } from "../titrants/keep-titrant";
import { useDesk, useMark } from "./desk";

interface KeepingProps {
  readonly host: Host;
  readonly record: TitrantRecord;
  readonly onDone: () => void;
}

function Keeping({ host, record, onDone }: KeepingProps) {
  const inMark = useMark();
  const planned = usePlanned({
    key: JSON.stringify(record),
    plan: (choice) => planTitrant(host, record, choice),
    write: (confirmed, pause, choice) => recordTitrant(host, record, confirmed, pause, choice),
  });
  return (
    <PlannedChange
      planned={planned}
      command="Keep this titrant"
      busyWords="Writing the row."
      inMark={inMark}
      undoTakes="takes the row back"
      afterwards={
        <>
          <Button size="large" className="wide" autoFocus onClick={onDone}>
            Go on with the titration
          </Button>
        </>
      }
    />
  );
}

export function KeepTitrant({ host }: { host: Host }) {
  const { view } = useDesk();
  if (view.draft.picked.way === "kept" || view.working.strength === undefined) return null;
  const record = titrantRecordOf(view);
  return (
    <OnRequest words="Keep this titrant in Titrants" closeWords="Leave it">
      {(close) =>
        record === undefined ? (
          <ul>
            {wantsOfKeeping(view).map((want) => (
              <li key={want}>{want}</li>
            ))}
          </ul>
        ) : (
          <Keeping host={host} record={record} onDone={close} />
        )
      }
    </OnRequest>
  );
}
