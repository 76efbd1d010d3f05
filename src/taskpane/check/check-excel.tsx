/** Check this Excel: begun by a press, one question on the way, then what was seen. */
import "../widgets/widgets.css";
import "../task.css";
import "./check.css";
import { Button, Spinner } from "@fluentui/react-components";
import { useRef, useState } from "react";
import type { Host } from "../../sheet/port";
import type { CheckedProgram } from "../../sheet/port/checked-program";
import { isRefused } from "../../sheet/refusal";
import { checkLines } from "../../workbook/checking/lines";
import { meaning, reportSheet } from "../../workbook/checking/report";
import { type Checked, checkThisExcel } from "../../workbook/checking/run";
import { dayOf } from "../share/make-copy";
import { PartHeading } from "../stepped/part-heading";
import { Say } from "../widgets/say";

type Stage =
  | { readonly at: "before" }
  | { readonly at: "refused"; readonly sentence: string }
  | { readonly at: "running"; readonly what: string }
  | { readonly at: "asking" }
  | { readonly at: "done"; readonly checked: Checked; readonly says?: string };

/** Long enough for the program to work some cells out. */
const pause = (): Promise<void> =>
  new Promise((done) => {
    setTimeout(done, 500);
  });

function Lines({ checked }: { readonly checked: Checked }) {
  return (
    <ul className="check-lines">
      {checked.report.seen.map(({ id, colour, words }) => (
        <li key={id} className={`check-${colour}`}>
          <strong>{checkLines.find((line) => line.id === id)?.name}</strong>
          {meaning[colour]}. {words}
        </li>
      ))}
    </ul>
  );
}

export interface CheckExcelProps {
  readonly host: Host;
  readonly program: CheckedProgram;
  readonly clock?: () => Date;
}

export default function CheckExcel({ host, program, clock = () => new Date() }: CheckExcelProps) {
  const [stage, setStage] = useState<Stage>({ at: "before" });
  const answer = useRef<(isPressed: boolean) => void>(() => undefined);

  const run = async (): Promise<void> => {
    const asking = {
      tell: (what: string) => {
        setStage({ at: "running", what });
      },
      undo: () =>
        new Promise<boolean>((answered) => {
          answer.current = answered;
          setStage({ at: "asking" });
        }),
    };
    const tools = { host, program, pause, now: () => clock().getTime() };
    setStage({ at: "running", what: "The workbook" });
    const checked = await checkThisExcel(tools, asking, dayOf(clock()));
    setStage(
      isRefused(checked) ? { at: "refused", sentence: checked.sentence } : { at: "done", checked },
    );
  };

  const openEmpty = async (): Promise<void> => {
    const stopped = await program.openEmpty();
    setStage({
      at: "refused",
      sentence: stopped
        ? "No empty workbook could be opened: open one yourself, open Titrebook in it, and check there."
        : "An empty workbook opens in a window of its own: open Titrebook there, and check there.",
    });
  };

  const takeOut = async (checked: Checked): Promise<void> => {
    const stopped = await program.removeSheets(checked.sheets);
    const says = stopped
      ? "They could not be taken out: close the workbook without saving it when it has been sent."
      : `They are taken out; ${reportSheet} stays.`;
    setStage({ at: "done", checked: { ...checked, sheets: stopped ? checked.sheets : [] }, says });
  };

  return (
    <section className="task" aria-label="Check this Excel">
      <PartHeading level="h2">Check this Excel</PartHeading>
      {stage.at === "before" || stage.at === "refused" ? (
        <>
          <p>
            Tries by itself, in an empty workbook, what nobody has tried in this version of Excel,
            and writes one sheet of what it saw. It takes some minutes and asks you to press Undo
            once.
          </p>
          <Button size="large" appearance="primary" className="wide" onClick={() => void run()}>
            Check in this workbook
          </Button>
          <Button size="large" className="wide" onClick={() => void openEmpty()}>
            Open an empty workbook
          </Button>
        </>
      ) : null}
      <div role="status">
        {stage.at === "refused" ? <Say tone="know">{stage.sentence}</Say> : null}
        {stage.at === "running" ? <Spinner size="small" label={`${stage.what}.`} /> : null}
        {stage.at === "asking" ? (
          <Say tone="know">
            A titration was recorded. Press Undo in Excel once (Ctrl+Z, on the Mac Command+Z, with a
            cell selected), then go on here.
          </Say>
        ) : null}
        {stage.at === "done" ? (
          <Say tone={stage.checked.notWritten ? "check" : "know"}>
            {stage.checked.notWritten
              ? "What was seen could not be written into the workbook: it stands below."
              : `It is written on the sheet ${reportSheet}. Save this workbook and send it to whoever looks after Titrebook.`}
          </Say>
        ) : null}
        {stage.at === "done" && stage.says ? <Say tone="know">{stage.says}</Say> : null}
      </div>
      {stage.at === "asking" ? (
        <>
          <Button
            size="large"
            appearance="primary"
            className="wide"
            onClick={() => {
              answer.current(true);
            }}
          >
            I have pressed Undo once
          </Button>
          <Button
            size="large"
            className="wide"
            onClick={() => {
              answer.current(false);
            }}
          >
            Go on without
          </Button>
        </>
      ) : null}
      {stage.at === "done" ? (
        <>
          {stage.checked.sheets.length === 0 ? null : (
            <Button size="large" className="wide" onClick={() => void takeOut(stage.checked)}>
              Take the sheets it worked on out
            </Button>
          )}
          <Lines checked={stage.checked} />
        </>
      ) : null}
    </section>
  );
}
