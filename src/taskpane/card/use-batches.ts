/** The batches on record, read again whenever the workbook changes. */
import { type Host, isFault } from "../../sheet/port";
import { faultSentence } from "../../workbook/planning/fault-wording";
import { type Batches, readBatches } from "../../workbook/planning/read-batches";
import { keepRead, useRead } from "../lots/use-read";

export type Found =
  | { readonly state: "looking" }
  | { readonly state: "read"; readonly batches: Batches }
  /** There is no table of batches, or no batch in it. */
  | { readonly state: "none" }
  | { readonly state: "refused"; readonly sentence: string };

const looking: Found = { state: "looking" };

async function look(host: Host): Promise<Found> {
  const found = await readBatches(host);
  if (found === undefined) return { state: "none" };
  if (isFault(found)) return { state: "refused", sentence: faultSentence(found) };
  return found.rows.length === 0 ? { state: "none" } : { state: "read", batches: found };
}

export const useBatches = (host: Host) => useRead<Found>(host, look, looking, keepRead);
