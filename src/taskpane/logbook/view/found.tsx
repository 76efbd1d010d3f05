/** What a re-check found, after its summary: of one kind or all, in one order or another. */
import { Button } from "@fluentui/react-components";
import { useState } from "react";
import { cellAt } from "../../../sheet/address";
import type { Finding, Latent, RecheckReport } from "../../../adopt/recheck/reporting/finding";
import { type MistakeId, mistakeOf } from "../../../adopt/recheck/mistakes/all";
import type { Logbook } from "../../../adopt/recheck/recheck";
import { PickList } from "../../widgets/pick-list";
import { Say } from "../../widgets/say";
import { counted, listed } from "../listed";
import { One } from "./finding";
import { rowLine } from "../row-line";
import { NotChecked } from "./not-checked";
import { Overview } from "./overview";
import { Report } from "./report";
import { ToMend } from "./to-mend";
import type { StepProps } from "./step-props";

const shownFirst = 40;

const latentWords = ({ heading, address, rows, mistake }: Latent): string =>
  `${heading}: right so far, but the formula of ${address} (${String(rows)} ${rows === 1 ? "row" : "rows"}) goes wrong as soon as a cell differs. ${mistakeOf(mistake).sentence}`;

interface FoundProps extends StepProps {
  readonly report: RecheckReport;
  readonly logbooks: readonly Logbook[];
}

export function Found({ host, state, act, inMark, report, logbooks }: FoundProps) {
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
      {report.latent.map((each) => (
        <Say key={`${each.address} ${each.mistake}`} tone="know">
          {latentWords(each)}
        </Say>
      ))}
      <NotChecked report={report} />
      {report.findings.length === 0 ? null : (
        <>
          <Overview report={report} logbooks={logbooks} />
          <PickList
            label="Show"
            value={state.only}
            options={[
              ["all", `All, ${String(report.findings.length)}`] as const,
              ...kinds.map(
                ([kind, count]) => [kind, `${mistakeOf(kind).name}, ${String(count)}`] as const,
              ),
            ]}
            onPick={(only: MistakeId | "all") => {
              act({ do: "only", only });
            }}
          />
          {state.only === "all" ? null : <p>{mistakeOf(state.only).sentence}</p>}
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
                row={rowLine(finding, logbooks)}
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
          <ToMend host={host} report={report} logbooks={logbooks} inMark={inMark} />
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
