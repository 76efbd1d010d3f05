/** What a re-check found, after its summary: by its cause, the worst first; then what is to be known besides. */
import { Button } from "@fluentui/react-components";
import { useState } from "react";
import { cellAt } from "../../../sheet/address";
import type { Finding, Latent, RecheckReport } from "../../../adopt/recheck/reporting/finding";
import { mistakeOf } from "../../../adopt/recheck/mistakes/all";
import { methanolWords } from "../../../adopt/recheck/reporting/methanol-seen";
import type { Logbook } from "../../../adopt/recheck/recheck";
import { Say } from "../../widgets/say";
import { remarksOn } from "../listed";
import { kindLines } from "../overview";
import { KindFound } from "./kind-found";
import { NotChecked } from "./not-checked";
import { Overview } from "./overview";
import { Report } from "./report";
import { ToMend } from "./to-mend";
import type { StepProps } from "./step-props";

const latentWords = ({ heading, address, rows, mistake }: Latent): string =>
  `${heading}: right so far, but the formula of ${address} (${String(rows)} ${rows === 1 ? "row" : "rows"}) goes wrong as soon as a cell differs. ${mistakeOf(mistake).sentence}`;

interface FoundProps extends StepProps {
  readonly report: RecheckReport;
  readonly logbooks: readonly Logbook[];
}

/** What is right so far, and what was not checked or was taken: after what is wrong. */
function Besides({ act, report }: Pick<FoundProps, "act" | "report">) {
  const { taken, cutShort } = remarksOn(report);
  return (
    <>
      <NotChecked report={report} />
      {report.latent.map((each) => (
        <Say key={`${each.address} ${each.mistake}`} tone="know">
          {latentWords(each)}
        </Say>
      ))}
      {report.methanol.map((each) => (
        <Say key={each.sheet} tone="know">
          {methanolWords(each)}
        </Say>
      ))}
      {taken === "" ? null : (
        <>
          <Say tone="know">{taken}</Say>
          <Button
            size="large"
            className="wide"
            onClick={() => {
              act({ do: "go", step: "recognise" });
            }}
          >
            Change what is assumed
          </Button>
        </>
      )}
      {cutShort === "" ? null : <Say tone="know">{cutShort}</Say>}
    </>
  );
}

export function Found({ host, act, inMark, report, logbooks }: FoundProps) {
  const [isReporting, setReporting] = useState(false);
  const [fault, setFault] = useState("");
  const kinds = kindLines(report);
  const jump = async ({ sheet, row, column, address }: Finding): Promise<void> => {
    const done = await host.write("", [{ do: "select", block: cellAt(sheet, row, column) }]);
    setFault(
      done ? `${address} could not be shown: finish what is being typed, then try again.` : "",
    );
  };
  return (
    <>
      {report.findings.length === 0 ? null : (
        <>
          <Overview report={report} logbooks={logbooks} />
          <p role="status">{fault}</p>
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
          {kinds.map((kind) => (
            <KindFound
              key={kind.words}
              kind={kind}
              logbooks={logbooks}
              isOnly={kinds.length === 1}
              inMark={inMark}
              onJump={(each) => void jump(each)}
            />
          ))}
        </>
      )}
      <Besides act={act} report={report} />
    </>
  );
}
