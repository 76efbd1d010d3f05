/** Keep this titrant in Titrants: the exact cells first, then one row. */
import { Button } from "@fluentui/react-components";
import { useState } from "react";
import type { Host } from "../../../sheet/port";
import { planTitrant, recordTitrant } from "../../../workbook/planning/record/record-titrant";
import type { TitrantRecord } from "../../../workbook/record/titrant-record";
import { PlannedChange } from "../../planned/planned-change";
import { usePlanned } from "../../planned/use-planned";
import { PartHeading } from "../../stepped/part-heading";
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
      afterwards={
        <>
          <p>Undo in the spreadsheet takes the row back.</p>
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
  const [isOpen, setOpen] = useState(false);
  if (view.draft.picked.way === "kept" || view.working.strength === undefined) return null;
  if (!isOpen) {
    return (
      // a block of its own: what follows it in the form must not stand beside it
      <div>
        <Button
          size="large"
          className="wide"
          onClick={() => {
            setOpen(true);
          }}
        >
          Keep this titrant in Titrants
        </Button>
      </div>
    );
  }
  const close = (): void => {
    setOpen(false);
  };
  const record = titrantRecordOf(view);
  return (
    <section>
      <PartHeading>Keep this titrant in Titrants</PartHeading>
      {record === undefined ? (
        <ul>
          {wantsOfKeeping(view).map((want) => (
            <li key={want}>{want}</li>
          ))}
        </ul>
      ) : (
        <Keeping host={host} record={record} onDone={close} />
      )}
      <Button size="large" className="wide" onClick={close}>
        Leave it
      </Button>
    </section>
  );
}
