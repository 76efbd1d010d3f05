/** The titrants on record, bottle by bottle, read again whenever the workbook changes. */
import { type Host, isFault } from "../../../sheet/port";
import { titrantHistories, type TitrantHistory } from "../../../workbook/over-time/titrant-history";
import { readTitrants } from "../../../workbook/planning/read-titrants";
import { keepKnown, useRead } from "../../lots/use-read";

/** Undefined where it cannot be read now; none where there is no such table. */
async function looked(host: Host): Promise<readonly TitrantHistory[] | undefined> {
  const found = await readTitrants(host);
  return isFault(found) ? undefined : titrantHistories(found ?? []);
}

type Found = readonly TitrantHistory[] | undefined;

const none: readonly TitrantHistory[] = [];

export const useHistories = (host: Host): readonly TitrantHistory[] =>
  useRead<Found>(host, looked, undefined, keepKnown).found ?? none;
