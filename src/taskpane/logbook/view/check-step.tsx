/** Re-check: every row from its readings, what is wrong and what it did; the way to each cell. */
import { Button, ProgressBar } from "@fluentui/react-components";
import { useRef } from "react";
import { openQuestions } from "../../../adopt/recognising/questions";
import type { RecheckReport } from "../../../adopt/recheck/reporting/finding";
import { aboveLimitWords } from "../../../adopt/recheck/reporting/above-limit";
import { oddMethanolWords } from "../../../adopt/recheck/reporting/methanol-seen";
import type { Logbook } from "../../../adopt/recheck/recheck";
import { unexpected } from "../../unexpected";
import { Say } from "../../widgets/say";
import { readLogbooks } from "../read-logbooks";
import { isAllRight, remarksOn, summaryWords } from "../listed";
import { type Running, runRecheck } from "../run-recheck";
import { type Action, agreedTables, type LogbookState, reduce } from "../state";
import { wantsAgreeing } from "../wants-agreeing";
import { Found } from "./found";
import type { StepProps } from "./step-props";

const logbooksOf = (state: LogbookState): Logbook[] =>
  agreedTables(state).map(({ mapping, cells }) => ({ mapping, cells }));

/** As the workbook is now: cells may have been changed since it was looked through. */
async function readAgain({ host, state, act }: StepProps): Promise<Logbook[]> {
  const found = await readLogbooks(host);
  if (found.do !== "found") return logbooksOf(state);
  const action: Action = { ...found, do: "refreshed" };
  act(action);
  return logbooksOf(reduce(state, action));
}

/** A tick only where all was checked and all is right; then what no batch should go on without. */
function Summary({ report }: { report: RecheckReport }) {
  const { noDose } = remarksOn(report);
  const isCheck = !isAllRight(report) && report.findings.length > 0;
  return (
    <>
      <Say tone={isCheck ? "check" : "know"}>{summaryWords(report)}</Say>
      {[
        ...report.aboveLimit.map(aboveLimitWords),
        ...report.methanol.flatMap(oddMethanolWords),
        ...(noDose === "" ? [] : [noDose]),
        ...doubtsIn(report),
      ].map((words) => (
        <Say key={words} tone="check">
          {words}
        </Say>
      ))}
    </>
  );
}

const doubtsIn = ({ unchecked }: RecheckReport): readonly string[] => [
  ...new Set(unchecked.flatMap(({ doubt }) => (doubt === undefined ? [] : [doubt]))),
];

/** A dose was not checked, and a question is open that may be why. */
const isMissingSome = ({ noDose }: RecheckReport, state: LogbookState): boolean =>
  noDose !== "" &&
  agreedTables(state).some(({ mapping, cells }) => openQuestions(mapping, cells) > 0);

/** The questions stand in the first step. */
function ToAnswer({ words, act }: Pick<StepProps, "act"> & { readonly words: string }) {
  return (
    <Button
      size="large"
      className="wide"
      onClick={() => {
        act({ do: "go", step: "recognise" });
      }}
    >
      {words}
    </Button>
  );
}

export function CheckStep(props: StepProps) {
  const { state, act } = props;
  const running = useRef<Running | undefined>(undefined);
  const logbooks = logbooksOf(state);
  const { check } = state;
  if (logbooks.length === 0)
    return (
      <Say tone="check">In Check columns: {wantsAgreeing(state) ?? "no logbook was found."}</Say>
    );
  return (
    <>
      {check.state === "done" ? null : (
        <p>
          Every row is worked out again from its readings and compared with what the sheet holds,
          within the digits shown. Nothing is written.
        </p>
      )}
      {check.state === "running" ? (
        <>
          <ProgressBar value={check.done} max={check.of} aria-label="Rows checked" />
          <p>
            {check.done} of {check.of} rows.
          </p>
          <Button
            size="large"
            className="wide"
            onClick={() => {
              running.current?.stop();
            }}
          >
            Stop
          </Button>
        </>
      ) : (
        <Button
          size="large"
          appearance={check.state === "done" ? "secondary" : "primary"}
          className="wide"
          onClick={() => {
            readAgain(props).then(
              (books) => {
                if (books.length > 0) running.current = runRecheck(books, act);
              },
              (failure: unknown) => {
                unexpected(failure);
                act({ do: "broke-off" });
              },
            );
          }}
        >
          {check.state === "done" ? "Re-check again" : "Re-check every row"}
        </Button>
      )}
      <div role="status">
        {check.state === "stopped" ? <Say tone="know">Stopped. Nothing was written.</Say> : null}
        {check.state === "broken off" ? (
          <Say tone="check">
            Something unexpected ended the re-check, so nothing is said about any row. It only
            reads: nothing was written. Try again.
          </Say>
        ) : null}
        {check.state === "done" ? <Summary report={check.report} /> : null}
      </div>
      {check.state === "done" && doubtsIn(check.report).length > 0 ? (
        <ToAnswer words="Pure, or as weighed: answer again" act={act} />
      ) : null}
      {check.state === "done" && isMissingSome(check.report, state) ? (
        <ToAnswer words="Say what is missing" act={act} />
      ) : null}
      {check.state === "done" ? (
        <Found {...props} report={check.report} logbooks={logbooks} />
      ) : null}
    </>
  );
}
