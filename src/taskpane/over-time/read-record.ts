/** All that the workbook's own tables hold over time. */
import { type Host, isFault } from "../../sheet/port";
import { faultSentence } from "../../workbook/planning/fault-wording";
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
    };

export const looking: OverTimeRecord = { state: "looking" };

export async function readRecord(host: Host): Promise<OverTimeRecord> {
  const titrations = await readTitrations(host);
  if (isFault(titrations)) return { state: "refused", sentence: faultSentence(titrations) };
  const titrants = await readTitrants(host);
  if (isFault(titrants)) return { state: "refused", sentence: faultSentence(titrants) };
  return {
    state: "read",
    titrations: titrations.rows,
    titrants: titrantHistories(titrants ?? []),
  };
}
