/** A sheet to print, on request: shown first, then made as a sheet of its own. */
import type { Host } from "../../../sheet/port";
import { makeWeighOut, planWeighOut } from "../../../workbook/planning/plan-weigh-out";
import type { WeighOutRecord } from "../../../workbook/weigh-out/weigh-out-record";
import { PlannedChange } from "../../planned/planned-change";
import { type Change, usePlanned } from "../../planned/use-planned";
import { PartHeading } from "../../stepped/part-heading";
import { printOf } from "../print";
import { useDesk, useMark } from "./desk";

const sheetOf = (record: WeighOutRecord | undefined): WeighOutRecord => {
  if (record === undefined) throw new Error("a sheet to print before there is a weigh-out");
  return record;
};

export function PrintSheet({ host, today }: { host: Host; today: string }) {
  const { view } = useDesk();
  const inMark = useMark();
  const record = printOf(view, today);
  const change: Change = {
    key: record && JSON.stringify(record),
    plan: () => planWeighOut(host, sheetOf(record)),
    write: (confirmed, pause) => makeWeighOut(host, sheetOf(record), confirmed, pause),
  };
  const planned = usePlanned(change);
  if (record === undefined) return null;
  return (
    <section aria-label="A weigh-out sheet to print">
      <PartHeading>A weigh-out sheet to print</PartHeading>
      <PlannedChange
        planned={planned}
        command="Make the weigh-out sheet"
        busyWords="Making the sheet."
        inMark={inMark}
        undoTakes="takes it back"
        afterwards={<p>Print it from the spreadsheet: two pages, upright.</p>}
      />
    </section>
  );
}
