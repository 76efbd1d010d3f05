/** What was found, put right in new columns beside the logbook; shown before it is written. */
import type { Host } from "../../../sheet/port";
import { carryOut } from "../../../workbook/planning/carry-out";
import { planMending } from "../../../workbook/planning/logbook/mend";
import type { Finding } from "../../../adopt/recheck/reporting/finding";
import type { Logbook } from "../../../adopt/recheck/recheck";
import { PlannedPress } from "../../planned/planned-press";
import type { Change } from "../../planned/use-planned";
import { PartHeading } from "../../stepped/part-heading";

interface MendProps {
  readonly host: Host;
  readonly logbook: Logbook;
  readonly findings: readonly Finding[];
  readonly inMark: (text: string) => string;
}

export function Mend({ host, logbook, findings, inMark }: MendProps) {
  const plan = () => planMending(host, logbook, findings);
  const change: Change = {
    key: "",
    plan,
    write: (confirmed, pause) =>
      carryOut(host, "Put the logbook right beside", plan, confirmed, pause),
  };
  const title = `Put right beside ${logbook.mapping.sheet}`;
  return (
    <section aria-label={title}>
      <PartHeading>{title}</PartHeading>
      <p>
        What stands there stays as it is. What was weighed out, and what may be a slip of a reading,
        is left to you.
      </p>
      <PlannedPress
        change={change}
        command="Write it beside"
        busyWords="Writing the columns."
        inMark={inMark}
        undoTakes="takes them away again"
      />
    </section>
  );
}
