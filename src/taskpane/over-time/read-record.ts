/** All that the workbook's own tables hold over time. */
import { type Host, isFault } from "../../sheet/port";
import { faultSentence } from "../../workbook/planning/fault-wording";
import { readBatches, type RecordedBatch } from "../../workbook/planning/read-batches";
import { readFuels, type RecordedFuel } from "../../workbook/planning/record/read-fuels";
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
      readonly fuels: readonly RecordedFuel[];
    };

export const looking: OverTimeRecord = { state: "looking" };

export async function readRecord(host: Host): Promise<OverTimeRecord> {
  const titrations = await readTitrations(host);
  if (isFault(titrations)) return { state: "refused", sentence: faultSentence(titrations) };
  const titrants = await readTitrants(host);
  if (isFault(titrants)) return { state: "refused", sentence: faultSentence(titrants) };
  const batches = await readBatches(host);
  if (isFault(batches)) return { state: "refused", sentence: faultSentence(batches) };
  const fuels = await readFuels(host);
  if (isFault(fuels)) return { state: "refused", sentence: faultSentence(fuels) };
  return {
    state: "read",
    batches: batches?.rows ?? [],
    fuels,
    titrations: titrations.rows,
    titrants: titrantHistories(titrants ?? []),
  };
}
