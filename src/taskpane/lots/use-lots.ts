/** The lots on record, read again whenever the workbook changes. */
import { useCallback } from "react";
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

async function looked(host: Host, until: number | undefined): Promise<Lots> {
  const found = await readLots(host, until);
  if (found === undefined) return { state: "none" };
  if (isFault(found)) return { state: "refused", sentence: faultSentence(found) };
  return found.length === 0 ? { state: "none" } : { state: "read", lots: found };
}

/** @param until the batch's day, as a spreadsheet counts days: titrations of a later day do not count */
export function useLots(
  host: Host,
  until?: number,
): { readonly lots: Lots; readonly again: () => void } {
  const look = useCallback((on: Host) => looked(on, until), [until]);
  const { found: lots, again } = useRead(host, look, looking, keepRead);
  return { lots, again };
}
