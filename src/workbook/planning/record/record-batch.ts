/** From a batch decided in the pane to a row of `Batches`: read, plan, agree, write, read back. */
import { type Host, isFault } from "../../../sheet/port";
import { refused } from "../../../sheet/refusal";
import type { BatchRecord } from "../../record/batch-record";
import { batches, batchesAlone } from "../../tables/batches";
import { blendsName, inBlends } from "../../tables/batch-cells";
import { finished } from "../finished";
import { placeOf } from "../headings";
import { readLogbook } from "../logbook/read-logbook";
import type { Confirmed, Plan, RecordOutcome, Refusal } from "../plan";
import { hindrance } from "../plan-table";
import { refusal } from "../refusal";
import { remarkWords } from "../remark-wording";
import type { Snapshot } from "../snapshot";
import { intoBlends, newBlends, together } from "./plan-blends";
import { planRecord, recordPlanned } from "./plan-record";
import type { Pause } from "../settle";
import type { RowChoice } from "./target-row";

type Way =
  /** `Batches` reads `Blends`. */
  | "with blends"
  /** A table of an earlier time, or one whose `Blends` is gone: one lot or two. */
  | "alone"
  /** Both are to be made. */
  | "new";

function wayOf(snapshot: Snapshot): Way {
  const { logbook, others } = snapshot;
  const has = others.some(({ name }) => name.toLowerCase() === blendsName.toLowerCase());
  if (!logbook) return has || hindrance(snapshot, { name: blendsName }) ? "alone" : "new";
  return has && placeOf(inBlends, logbook.table.headings) !== undefined ? "with blends" : "alone";
}

const mostAlone = 2;

/** What recording would do. Reads, never writes. */
export async function planBatch(
  host: Host,
  record: BatchRecord,
  choice?: RowChoice,
): Promise<Plan | Refusal> {
  const snapshot = await readLogbook(host, batches.name);
  if (isFault(snapshot)) return refusal(snapshot);
  const way = wayOf(snapshot);
  if (way === "alone") {
    return record.lots.length > mostAlone
      ? refused(remarkWords.noBlends(batches.name))
      : planRecord(host, batchesAlone, record, choice);
  }
  const plan = await planRecord(host, batches, record, choice);
  if (plan.kind === "refused") return plan;
  if (way === "new") return finished(together(plan, newBlends(snapshot, record)));
  const part = await intoBlends(host, record);
  if (part === undefined) return plan;
  if (isFault(part)) return refusal(part);
  return "kind" in part ? part : finished(together(plan, part));
}

/** Plans anew and writes only what was agreed to. `pause` lets slow functions answer. */
export const recordBatch = (
  host: Host,
  record: BatchRecord,
  confirmed: Confirmed | undefined,
  pause?: Pause,
  choice?: RowChoice,
): Promise<RecordOutcome> =>
  recordPlanned(host, batches, () => planBatch(host, record, choice), {
    label: `Record batch ${record.batch}`.trim(),
    confirmed,
    pause,
  });
