/** Keep this lot of lye in LyeLots: the exact cells first, then one row. */
import { baseNamed } from "../../../core/reference/bases";
import type { Host } from "../../../sheet/port";
import { planLyeLot, recordLyeLot } from "../../../workbook/planning/record/record-lye-lot";
import type { LyeLotRecord } from "../../../workbook/record/lye-lot-record";
import { OnRequest } from "../../planned/on-request";
import { PlannedChange } from "../../planned/planned-change";
import { usePlanned } from "../../planned/use-planned";
import { sheetDay } from "../../widgets/day";
import { useDesk, useMark } from "./desk";

function Keeping({ host, record }: { host: Host; record: LyeLotRecord }) {
  const inMark = useMark();
  const planned = usePlanned({
    key: JSON.stringify(record),
    plan: (choice) => planLyeLot(host, record, choice),
    write: (confirmed, pause, choice) => recordLyeLot(host, record, confirmed, pause, choice),
  });
  return (
    <PlannedChange
      planned={planned}
      command="Keep this lot"
      busyWords="Writing the row."
      inMark={inMark}
      undoTakes="takes the row back"
    />
  );
}

export function KeepLyeLot({ host, today }: { host: Host; today: string }) {
  const { view, lyeLots } = useDesk();
  const { picked, words } = view.draft;
  const lot = words.lyeLot.trim();
  const assay = view.figures.value("assay");
  const base = baseNamed(picked.base)?.name;
  if (lot === "" || assay === undefined || base === undefined) return null;
  const isKept = lyeLots.some(
    (each) =>
      each.base === base && each.lot.toLowerCase() === lot.toLowerCase() && assay.eq(each.assay),
  );
  if (isKept) return null;
  const record = { lot, base, assay, date: sheetDay(today), note: "" };
  return (
    <OnRequest words="Keep this lot of lye" closeWords="Not now">
      {() => <Keeping host={host} record={record} />}
    </OnRequest>
  );
}
