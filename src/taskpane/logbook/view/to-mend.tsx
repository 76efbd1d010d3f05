/** A button for each logbook in which something can be put right, and the change once it is pressed. */
import { Button } from "@fluentui/react-components";
import { useState } from "react";
import type { RecheckReport } from "../../../adopt/recheck/reporting/finding";
import type { Logbook } from "../../../adopt/recheck/recheck";
import { counted } from "../../../sheet/counted";
import type { Host } from "../../../sheet/port";
import { mendable } from "../../../workbook/planning/logbook/mend";
import { Mend } from "./mend";

interface ToMendProps {
  readonly host: Host;
  readonly report: RecheckReport;
  readonly logbooks: readonly Logbook[];
  readonly inMark: (text: string) => string;
}

export function ToMend({ host, report, logbooks, inMark }: ToMendProps) {
  const [begun, setBegun] = useState<readonly number[]>([]);
  return logbooks.map((logbook, at) => {
    const findings = mendable(report.findings, logbook);
    const { sheet, place } = logbook.mapping;
    const key = `${sheet} ${String(place.headingRow)} ${String(place.firstColumn)}`;
    if (findings.length === 0) return null;
    if (begun.includes(at))
      return <Mend key={key} host={host} logbook={logbook} findings={findings} inMark={inMark} />;
    return (
      <Button
        key={key}
        size="large"
        className="wide"
        onClick={() => {
          setBegun([...begun, at]);
        }}
      >
        {`Put ${counted(findings.length, "figure")} of ${sheet} right, in new columns`}
      </Button>
    );
  });
}
