/** The titrations on record, read again whenever the workbook changes. */
import { type Host, isFault } from "../../../sheet/port";
import { type OnRecord, readTitrations } from "../../../workbook/planning/read-titrations";
import { keepKnown, useRead } from "../../lots/use-read";

async function looked(host: Host): Promise<OnRecord | undefined> {
  const found = await readTitrations(host);
  return isFault(found) ? undefined : found;
}

/** @returns undefined until it could be read */
export const useRecord = (host: Host): OnRecord | undefined =>
  useRead<OnRecord | undefined>(host, looked, undefined, keepKnown).found;
