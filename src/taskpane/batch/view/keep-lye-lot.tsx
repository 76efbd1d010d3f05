/** Keep this lot of lye in LyeLots: the exact cells first, then one row. */
import { useEffect, useState } from "react";
import { baseNamed } from "../../../core/reference/bases";
import type { Host } from "../../../sheet/port";
import { planLyeLot, recordLyeLot } from "../../../workbook/planning/record/record-lye-lot";
import type { LyeLotRecord } from "../../../workbook/record/lye-lot-record";
import { OnRequest } from "../../planned/on-request";
import { PlannedChange } from "../../planned/planned-change";
import { usePlanned } from "../../planned/use-planned";
import { sheetDay } from "../../widgets/day";
import { useDesk, useMark } from "./desk";

interface KeepingProps {
  readonly host: Host;
  readonly record: LyeLotRecord;
  readonly onBegun: () => void;
}

function Keeping({ host, record, onBegun }: KeepingProps) {
  useEffect(onBegun);
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
  /** What was asked for here stays when it is kept: it says that it is written. */
  const [begun, setBegun] = useState("");
  const { picked, words } = view.draft;
  const lot = words.lyeLot.trim();
  const assay = view.figures.value("assay");
  const base = baseNamed(picked.base)?.name;
  if (lot === "" || assay === undefined || base === undefined) return null;
  const isKept = lyeLots.some(
    (each) =>
      each.base === base && each.lot.toLowerCase() === lot.toLowerCase() && assay.eq(each.assay),
  );
  const name = `${base} ${lot} ${assay.toString()}`;
  if (isKept && begun !== name) return null;
  const record = { lot, base, assay, date: sheetDay(today), note: "" };
  return (
    <OnRequest words="Keep this lot of lye" closeWords="Not now">
      {() => (
        <Keeping
          host={host}
          record={record}
          onBegun={() => {
            setBegun(name);
          }}
        />
      )}
    </OnRequest>
  );
}
