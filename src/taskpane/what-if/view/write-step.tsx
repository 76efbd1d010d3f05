/** Write: what form, where, the exact cells, and only then the workbook. */
import { Button } from "@fluentui/react-components";
import { useState } from "react";
import { isProblem } from "../../../core/problem/problem";
import { say } from "../../../core/problem/wording";
import type { Block, Host } from "../../../sheet/port";
import { address } from "../../../sheet/address";
import {
  planWhatIf,
  type WhatIfAsked,
  writeWhatIf,
} from "../../../workbook/planning/what-if/plan-what-if";
import type { WhatIfPlace } from "../../../workbook/planning/what-if/what-if-place";
import type { Doses } from "../../../workbook/what-if/doses";
import { oneFormula } from "../../../workbook/what-if/one-formula";
import type { WhatIfQuestion } from "../../../workbook/what-if/question";
import { PlannedChange } from "../../planned/planned-change";
import { usePlanned } from "../../planned/use-planned";
import { capital } from "../../widgets/shown-number";
import { Say } from "../../widgets/say";
import type { StepId } from "../what-if";
import { textOf, useDoses } from "../use-doses";
import { useSelected } from "../use-selected";
import { Choose, useDesk, useMark, Wants } from "./desk";

function Form({ question }: { question: WhatIfQuestion }) {
  const { view } = useDesk();
  const found = oneFormula(question);
  return (
    <>
      <Choose field="form" />
      {view.draft.picked.form === "one-formula" && found.kind === "formula" ? (
        <Say tone="know">
          Its figures stay inside it. A table keeps each in a cell you can change.
        </Say>
      ) : null}
    </>
  );
}

interface ChangeProps {
  readonly host: Host;
  readonly asked: WhatIfAsked;
  readonly onDone: (isDone: boolean) => void;
}

/** One change, planned as it is mounted: another form or place is another change. */
function OneChange({ host, asked, onDone }: ChangeProps) {
  const inMark = useMark();
  const planned = usePlanned({
    key: "",
    plan: () => planWhatIf(host, asked),
    write: (confirmed, pause) => writeWhatIf(host, asked, confirmed, pause),
    written: () => {
      onDone(true);
      return [];
    },
  });
  return (
    <PlannedChange
      planned={planned}
      command={asked.form === "table" ? "Write this table" : "Write this formula"}
      busyWords="Writing."
      inMark={inMark}
      undoTakes="takes all of it back"
      afterwards={
        <>
          <Button
            size="large"
            className="wide"
            autoFocus
            onClick={() => {
              onDone(false);
              planned.again();
            }}
          >
            Write it once more
          </Button>
        </>
      }
    />
  );
}

interface WriteProps {
  readonly host: Host;
  readonly question: WhatIfQuestion;
  readonly doses: Doses;
  readonly onWritten: (question: string) => void;
}

const placeAt = (selected: Block | undefined): WhatIfPlace | undefined =>
  selected && {
    kind: "cell",
    sheet: selected.sheet,
    row: selected.row,
    column: selected.column,
  };

function Write({ host, question, doses, onWritten }: WriteProps) {
  const { view } = useDesk();
  const { form, place: picked } = view.draft.picked;
  /** What was written selects itself: the place must not follow it. */
  const [isDone, setDone] = useState(false);
  const selected = useSelected(host, picked === "cell" && !isDone);
  const place = picked === "new-sheet" ? ({ kind: "new-sheet" } as const) : placeAt(selected);
  return (
    <>
      {isDone ? null : (
        <>
          <Form question={question} />
          <Choose field="place" />
          {picked === "cell" ? (
            <p className="soft">
              {selected
                ? `From ${address({ ...selected, rows: 1, columns: 1 })} on, to the right and down. Select another cell to move it.`
                : "Select a cell in the spreadsheet."}
            </p>
          ) : null}
        </>
      )}
      {place ? (
        <OneChange
          key={`${form} ${JSON.stringify(place)}`}
          host={host}
          asked={{ question, doses, form, place }}
          onDone={(isWritten) => {
            setDone(isWritten);
            if (isWritten) onWritten(textOf(question));
          }}
        />
      ) : null}
    </>
  );
}

function WithDoses({ host, question, onWritten }: Omit<WriteProps, "doses">) {
  const inMark = useMark();
  const doses = useDoses(question);
  return isProblem(doses) ? (
    <Say tone="check">{inMark(capital(say(doses)))}</Say>
  ) : (
    <Write
      key={textOf(question)}
      host={host}
      question={question}
      doses={doses}
      onWritten={onWritten}
    />
  );
}

export interface WriteStepProps {
  readonly host: Host;
  readonly onGo: (step: StepId) => void;
  readonly onWritten: (question: string) => void;
}

export function WriteStep({ host, onGo, onWritten }: WriteStepProps) {
  const { view } = useDesk();
  const { question, wants } = view.working;
  return question ? (
    <WithDoses host={host} question={question} onWritten={onWritten} />
  ) : (
    <Wants title="For the table" wants={wants} onGo={onGo} />
  );
}
