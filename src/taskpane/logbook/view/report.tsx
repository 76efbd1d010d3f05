/** The report of a re-check on a new sheet; shown before it is written. */
import type { Host } from "../../../sheet/port";
import { carryOut } from "../../../workbook/planning/carry-out";
import { planReport } from "../../../workbook/planning/logbook/recheck-report";
import type { RecheckReport } from "../../../adopt/recheck/reporting/finding";
import type { Logbook } from "../../../adopt/recheck/recheck";
import { PlannedChange } from "../../planned/planned-change";
import { usePlanned } from "../../planned/use-planned";
import { PartHeading } from "../../stepped/part-heading";

export function Report({
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
    <section aria-label="Report on a new sheet">
      <PartHeading>Report on a new sheet</PartHeading>
      <PlannedChange
        planned={planned}
        command="Write this report"
        busyWords="Writing the report."
        inMark={inMark}
        undoTakes="takes the sheet away again"
      />
    </section>
  );
}
