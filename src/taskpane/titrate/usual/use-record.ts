/** The titrations on record, read again whenever the workbook changes. */
import { type Host, isFault } from "../../../sheet/port";
import { type OnRecord, readTitrations } from "../../../workbook/planning/read-titrations";
import { useRead } from "../../lots/use-read";

async function looked(host: Host): Promise<OnRecord | undefined> {
  const found = await readTitrations(host);
  return isFault(found) ? undefined : found;
}

/** What was read stays while a workbook that is being edited cannot be read. */
const shown = (found: OnRecord | undefined, was: OnRecord | undefined) => found ?? was;

/** @returns undefined until it could be read */
export const useRecord = (host: Host): OnRecord | undefined =>
  useRead(host, looked, undefined, shown).found;
