/** Re-check: every row from its readings, what is wrong and what it did; the way to each cell. */
import { Button, ProgressBar } from "@fluentui/react-components";
import { useRef, useState } from "react";
import type { Host } from "../../../host/port";
import { cellAt } from "../../../workbook/planning/address";
import { carryOut } from "../../../workbook/planning/carry-out";
import { planReport } from "../../../workbook/planning/recheck-report";
import type { Finding, Latent, RecheckReport } from "../../../workbook/recheck/finding";
import { type MistakeId, mistakeNames, mistakeSentences } from "../../../workbook/recheck/mistakes";
import type { Logbook } from "../../../workbook/recheck/recheck";
import { PlannedChange } from "../../planned/planned-change";
import { usePlanned } from "../../planned/use-planned";
import { PickList } from "../../widgets/pick-list";
import { Say } from "../../widgets/say";
import { counted, effectWords, figureWords, listed, summaryWords } from "../listed";
import { type Running, runRecheck } from "../run-recheck";
import { agreedTables, type LogbookState } from "../state";
import type { StepProps } from "./recognise-step";

const shownFirst = 40;

interface OneProps {
  readonly finding: Finding;
  readonly inMark: (text: string) => string;
  readonly onJump: (finding: Finding) => void;
}

function One({ finding, inMark, onJump }: OneProps) {
  const { address, heading, label, mistake, fromRow, formula } = finding;
  return (
    <li className="finding">
      <h3>{mistakeNames[mistake]}</h3>
      <p>
        {heading}
        {label === "" ? "" : ` of ${label}`}: {inMark(figureWords(finding))}.
      </p>
      <p>{inMark(effectWords(finding))}</p>
      {fromRow === undefined ? null : (
        <p className="soft">Made in the titration of row {fromRow}.</p>
      )}
      {formula === "" ? null : (
        <p className="soft">
          Its formula shows it: <code>{formula}</code>
        </p>
      )}
      <Button
        size="large"
        onClick={() => {
          onJump(finding);
        }}
      >
        Go to {address}
      </Button>
    </li>
  );
}

const latentWords = ({ heading, address, rows, mistake }: Latent): string =>
  `${heading}: right so far, but the formula of ${address} (${String(rows)} ${rows === 1 ? "row" : "rows"}) goes wrong as soon as a cell differs. ${mistakeSentences[mistake]}`;

function Report({
  host,
  report,
  logbooks,
  inMark,
}: {
  host: Host;
  report: RecheckReport;
  logbooks: readonly Logbook[];
  inMark: (text: string) => string;
}) {
  const plan = () => planReport(host, report, logbooks);
  const planned = usePlanned({
    key: "",
    plan,
    write: (confirmed, pause) =>
      carryOut(host, "Write the report of the re-check", plan, confirmed, pause),
  });
  return (
    <PlannedChange
      planned={planned}
      command="Write this report"
      busyWords="Writing the report."
      inMark={inMark}
      afterwards={<p>Undo in the spreadsheet takes the sheet away again.</p>}
    />
  );
}

interface FoundProps extends StepProps {
  readonly report: RecheckReport;
  readonly logbooks: readonly Logbook[];
}

function Found({ host, state, act, inMark, report, logbooks }: FoundProps) {
  const [most, setMost] = useState(shownFirst);
  const [isReporting, setReporting] = useState(false);
  const [fault, setFault] = useState("");
  const found = listed(report, state.only, state.order);
  const kinds = counted(report);
  const jump = async ({ sheet, row, column, address }: Finding): Promise<void> => {
    const done = await host.write("", [{ do: "select", block: cellAt(sheet, row, column) }]);
    setFault(
      done ? `${address} could not be shown: finish what is being typed, then try again.` : "",
    );
  };
  return (
    <>
      <Say tone={report.findings.length === 0 ? "done" : "mind"}>{summaryWords(report)}</Say>
      {report.latent.map((each) => (
        <Say key={`${each.address} ${each.mistake}`} tone="know">
          {latentWords(each)}
        </Say>
      ))}
      {report.findings.length === 0 ? null : (
        <>
          <PickList
            label="Show"
            value={state.only}
            options={[
              ["all", `All, ${String(report.findings.length)}`] as const,
              ...kinds.map(
                ([kind, count]) => [kind, `${mistakeNames[kind]}, ${String(count)}`] as const,
              ),
            ]}
            onPick={(only: MistakeId | "all") => {
              act({ do: "only", only });
            }}
          />
          {state.only === "all" ? null : <p>{mistakeSentences[state.only]}</p>}
          <PickList
            label="In order of"
            value={state.order}
            options={[
              ["row", "Row"],
              ["effect", "Effect, the largest first"],
              ["mistake", "Mistake"],
            ]}
            onPick={(order) => {
              act({ do: "order", order });
            }}
          />
          <p role="status">{fault}</p>
          <ol className="findings" aria-label="Findings">
            {found.slice(0, most).map((finding) => (
              <One
                key={`${finding.sheet} ${finding.address} ${finding.mistake}`}
                finding={finding}
                inMark={inMark}
                onJump={(each) => void jump(each)}
              />
            ))}
          </ol>
          {found.length > most ? (
            <Button
              size="large"
              className="wide"
              onClick={() => {
                setMost(most + 200);
              }}
            >
              Show {Math.min(200, found.length - most)} more of {found.length - most}
            </Button>
          ) : null}
          {isReporting ? (
            <Report host={host} report={report} logbooks={logbooks} inMark={inMark} />
          ) : (
            <Button
              size="large"
              className="wide"
              onClick={() => {
                setReporting(true);
              }}
            >
              Report on a new sheet
            </Button>
          )}
        </>
      )}
    </>
  );
}

const logbooksOf = (state: LogbookState): Logbook[] =>
  agreedTables(state).map(({ mapping, cells }) => ({ mapping, cells }));

export function CheckStep(props: StepProps) {
  const { state, act } = props;
  const running = useRef<Running | undefined>(undefined);
  const logbooks = logbooksOf(state);
  const { check } = state;
  if (logbooks.length === 0)
    return <Say tone="mind">First agree what the columns are, in the step Understand.</Say>;
  return (
    <>
      <p>
        Every row is worked out again from its readings and compared with what the sheet holds,
        within the digits shown. Nothing is written.
      </p>
      {check.state === "running" ? (
        <>
          <ProgressBar value={check.done} max={check.of} aria-label="Rows checked" />
          <p role="status">
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
            running.current = runRecheck(logbooks, act);
          }}
        >
          {check.state === "done" ? "Re-check again" : "Re-check every row"}
        </Button>
      )}
      <div role="status">
        {check.state === "stopped" ? <Say tone="know">Stopped. Nothing was written.</Say> : null}
      </div>
      {check.state === "done" ? (
        <Found {...props} report={check.report} logbooks={logbooks} />
      ) : null}
    </>
  );
}
