/** What was agreed, written on a sheet where everybody sees it; shown before it is. */
import type { Host } from "../../../sheet/port";
import { carryOut } from "../../../workbook/planning/carry-out";
import { planRemembering } from "../../../workbook/planning/logbook/remember-columns";
import { PlannedPress } from "../../planned/planned-press";
import type { Change } from "../../planned/use-planned";
import { PartHeading } from "../../stepped/part-heading";
import type { FoundTable } from "../found-table";

export function Remember({
  host,
  table,
  inMark,
}: {
  host: Host;
  table: FoundTable;
  inMark: (text: string) => string;
}) {
  const change: Change = {
    key: JSON.stringify(table.mapping),
    plan: () => planRemembering(host, table.mapping),
    write: (confirmed, pause) =>
      carryOut(
        host,
        "Remember the logbook's columns",
        () => planRemembering(host, table.mapping),
        confirmed,
        pause,
      ),
  };
  return (
    <section aria-label="Remember this in the workbook">
      <PartHeading>Remember this in the workbook</PartHeading>
      <PlannedPress
        change={change}
        command="Write it on a sheet"
        busyWords="Writing."
        inMark={inMark}
        undoTakes="takes it back"
      />
    </section>
  );
}
