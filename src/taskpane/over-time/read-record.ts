/** All that the workbook's own tables hold over time. */
import { type Host, isFault } from "../../sheet/port";
import { faultSentence } from "../../workbook/planning/fault-wording";
import { readBatches, type RecordedBatch } from "../../workbook/planning/read-batches";
import { readTitrants } from "../../workbook/planning/read-titrants";
import { readTitrations, type RecordedTitration } from "../../workbook/planning/read-titrations";
import { titrantHistories, type TitrantHistory } from "../../workbook/over-time/titrant-history";

export type OverTimeRecord =
  | { readonly state: "looking" }
  | { readonly state: "refused"; readonly sentence: string }
  | {
      readonly state: "read";
      readonly titrations: readonly RecordedTitration[];
      readonly titrants: readonly TitrantHistory[];
      readonly batches: readonly RecordedBatch[];
    };

export const looking: OverTimeRecord = { state: "looking" };

export async function readRecord(host: Host): Promise<OverTimeRecord> {
  const titrations = await readTitrations(host);
  if (isFault(titrations)) return { state: "refused", sentence: faultSentence(titrations) };
  const titrants = await readTitrants(host);
  if (isFault(titrants)) return { state: "refused", sentence: faultSentence(titrants) };
  const batches = await readBatches(host);
  if (isFault(batches)) return { state: "refused", sentence: faultSentence(batches) };
  return {
    state: "read",
    batches: batches?.rows ?? [],
    titrations: titrations.rows,
    titrants: titrantHistories(titrants ?? []),
  };
}
