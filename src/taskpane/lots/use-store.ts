/** What is left of each lot, read again whenever the workbook changes. */
import { type Host, isFault } from "../../sheet/port";
import { type LotInStore, readStore } from "../../workbook/planning/read-store";
import { keepKnown, useRead } from "./use-read";

type Store = readonly LotInStore[];

const nothing: Store = [];

async function look(host: Host): Promise<Store | undefined> {
  const found = await readStore(host);
  return isFault(found) ? undefined : (found ?? nothing);
}

/** Nothing where there is no table `Lots`, or it cannot be read. */
export const useStore = (host: Host): Store =>
  useRead<Store | undefined>(host, look, undefined, keepKnown).found ?? nothing;
