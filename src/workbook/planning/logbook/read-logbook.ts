/** Reads what a plan needs to know. Reads only. */
import { type Cells, type Fault, fault, type Found, type Host, isFault } from "../../../sheet/port";
import { asked } from "../asked";
import type { Snapshot } from "../snapshot";

type Kind = Found["kind"];
type Of<K extends Kind> = Extract<Found, { kind: K }>;

/** The answer of a kind among others; a host that answers something else has failed. */
export const answerOf = <K extends Kind>(kind: K, found: Found | undefined): Of<K> | Fault =>
  found?.kind === kind ? (found as Of<K>) : fault("failed", kind);

/** The table's cells and the row below them. */
async function cellsOf(host: Host, block: Cells["block"]): Promise<Cells | Fault> {
  const wanted = { ...block, rows: block.rows + 1 };
  const found = await asked(() => host.read([{ ask: "cells", block: wanted }]));
  return isFault(found) ? found : answerOf("cells", found[0]);
}

export async function readLogbook(host: Host, tableName: string): Promise<Snapshot | Fault> {
  const can = await asked(() => host.capabilities());
  if (isFault(can)) return can;
  if (!can.canWrite) return fault("read-only");
  const found = await asked(() =>
    host.read([{ ask: "sheets" }, { ask: "names" }, { ask: "table", name: tableName }]),
  );
  if (isFault(found)) return found;
  const sheets = answerOf("sheets", found[0]);
  if (isFault(sheets)) return sheets;
  const names = answerOf("names", found[1]);
  if (isFault(names)) return names;
  if (found[2]?.kind === "nothing") return { sheets, names, logbook: undefined };
  const table = answerOf("table", found[2]);
  if (isFault(table)) return table;
  const cells = await cellsOf(host, table.block);
  return isFault(cells) ? cells : { sheets, names, logbook: { table, cells } };
}
