/** The lots on record, read again whenever the workbook changes. */
import { type Host, isFault } from "../../sheet/port";
import { faultSentence } from "../../workbook/planning/fault-wording";
import { readLots, type RecordedLot } from "../../workbook/planning/read-lots";
import { keepRead, useRead } from "./use-read";

export type Lots =
  | { readonly state: "looking" }
  | { readonly state: "read"; readonly lots: readonly RecordedLot[] }
  /** There is no table of titrations, or it has no lot. */
  | { readonly state: "none" }
  | { readonly state: "refused"; readonly sentence: string };

const looking: Lots = { state: "looking" };

async function looked(host: Host): Promise<Lots> {
  const found = await readLots(host);
  if (found === undefined) return { state: "none" };
  if (isFault(found)) return { state: "refused", sentence: faultSentence(found) };
  return found.length === 0 ? { state: "none" } : { state: "read", lots: found };
}

export function useLots(host: Host): { readonly lots: Lots; readonly again: () => void } {
  const { found: lots, again } = useRead(host, looked, looking, keepRead);
  return { lots, again };
}
