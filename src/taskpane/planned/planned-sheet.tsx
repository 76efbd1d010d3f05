/** A sheet of its own, made when it is asked for: the exact cells first, then one change. */
import type { Host } from "../../sheet/port";
import type { Confirmed, Plan, RecordOutcome, Refusal } from "../../workbook/planning/plan";
import { OnRequest } from "./on-request";
import type { InMark } from "./plan-view";
import { PlannedPress } from "./planned-press";
import type { Change } from "./use-planned";

interface SheetProps<Asked> {
  readonly host: Host;
  /** What is to be on it: equal figures need no new plan. */
  readonly asked: Asked;
  readonly plan: (host: Host, asked: Asked) => Promise<Plan | Refusal>;
  readonly write: (
    host: Host,
    asked: Asked,
    confirmed: Confirmed,
    pause: () => Promise<void>,
  ) => Promise<RecordOutcome>;
  readonly inMark: InMark;
  /** What undo does to it: "takes the sheet back". */
  readonly undoTakes: string;
}

function Sheet<Asked>({ host, asked, plan, write, inMark, undoTakes }: SheetProps<Asked>) {
  const change: Change = {
    key: JSON.stringify(asked),
    plan: () => plan(host, asked),
    write: (confirmed, pause) => write(host, asked, confirmed, pause),
  };
  return (
    <PlannedPress
      change={change}
      command="Make this sheet"
      busyWords="Writing."
      inMark={inMark}
      undoTakes={undoTakes}
    />
  );
}

export interface PlannedSheetProps<Asked> extends SheetProps<Asked> {
  /** What opens it: "Put these figures on a sheet". */
  readonly words: string;
  readonly closeWords: string;
}

export function PlannedSheet<Asked>({ words, closeWords, ...sheet }: PlannedSheetProps<Asked>) {
  return (
    <OnRequest words={words} closeWords={closeWords}>
      {() => <Sheet {...sheet} />}
    </OnRequest>
  );
}
