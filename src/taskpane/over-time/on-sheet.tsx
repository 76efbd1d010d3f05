/** The charts on a sheet of the workbook: the exact cells first, then one change. */
import type { Host } from "../../sheet/port";
import { planOverTime, writeOverTime } from "../../workbook/planning/plan-over-time";
import type { Series } from "../../workbook/over-time/series";
import { OnRequest } from "../planned/on-request";
import { PlannedChange } from "../planned/planned-change";
import { usePlanned } from "../planned/use-planned";
import { type Charts, drawable } from "./charts";

interface SheetProps {
  readonly host: Host;
  readonly series: readonly Series[];
  readonly today: number;
  readonly inMark: (text: string) => string;
}

function OneSheet({ host, series, today, inMark }: SheetProps) {
  const asked = { series, today };
  const planned = usePlanned({
    key: JSON.stringify(asked),
    plan: () => planOverTime(host, asked),
    write: (confirmed, pause) => writeOverTime(host, asked, confirmed, pause),
  });
  return (
    <PlannedChange
      planned={planned}
      command="Make this sheet"
      busyWords="Writing."
      inMark={inMark}
      undoTakes="takes all of it back"
    />
  );
}

export interface OnSheetProps {
  readonly host: Host;
  readonly charts: Charts;
  readonly today: number;
  readonly inMark: (text: string) => string;
}

export function OnSheet({ host, charts, today, inMark }: OnSheetProps) {
  const series = drawable(charts);
  if (series.length === 0) return null;
  return (
    <OnRequest words="Put these charts on a sheet" closeWords="Close">
      {() => <OneSheet host={host} series={series} today={today} inMark={inMark} />}
    </OnRequest>
  );
}
