/** The lye lots of the workbook's own table, read again whenever it changes. */
import { type Host, isFault } from "../../sheet/port";
import { type KeptLyeLot, readLyeLots } from "../../workbook/planning/bench/read-lye-lots";
import { keepKnown, useRead } from "../lots/use-read";

type Found = readonly KeptLyeLot[] | undefined;

async function looked(host: Host): Promise<Found> {
  const found = await readLyeLots(host);
  return isFault(found) ? undefined : found;
}

const none: readonly KeptLyeLot[] = [];

export const useLyeLots = (host: Host): readonly KeptLyeLot[] =>
  useRead<Found>(host, looked, undefined, keepKnown).found ?? none;
