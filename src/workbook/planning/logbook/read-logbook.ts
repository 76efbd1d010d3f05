/** Reads what a plan needs to know. Reads only. */
import {
  type Block,
  type Cells,
  type Fault,
  fault,
  type Found,
  type Host,
  isFault,
  type Names,
  type Sheets,
} from "../../../sheet/port";
import { asked } from "../asked";
import type { Snapshot } from "../snapshot";

type Kind = Found["kind"];
type Of<K extends Kind> = Extract<Found, { kind: K }>;

/** The answer of a kind among others; a host that answers something else has failed. */
export const answerOf = <K extends Kind>(kind: K, found: Found | undefined): Of<K> | Fault =>
  found?.kind === kind ? (found as Of<K>) : fault("failed", kind);

/** More rows below a table are not looked at. */
const mostBelow = 200;

/** The table's cells, and those below it down to the first row that is surely empty. */
async function cellsOf(host: Host, block: Block, { sheets }: Sheets): Promise<Cells | Fault> {
  const used = sheets.find(({ name }) => name === block.sheet)?.used;
  const end = block.row + block.rows;
  const below = used ? Math.max(0, Math.min(used.row + used.rows - end, mostBelow)) : 0;
  const wanted = { ...block, rows: block.rows + below + 1 };
  const found = await asked(() => host.read([{ ask: "cells", block: wanted }]));
  return isFault(found) ? found : answerOf("cells", found[0]);
}

async function otherTables(host: Host, { tables }: Names, name: string): Promise<Block[] | Fault> {
  const others = tables.filter((each) => each.toLowerCase() !== name.toLowerCase());
  if (others.length === 0) return [];
  const found = await asked(() =>
    host.read(others.map((each) => ({ ask: "table", name: each }) as const)),
  );
  if (isFault(found)) return found;
  return found.flatMap((each) => (each.kind === "table" ? [each.block] : []));
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
  const cells = await cellsOf(host, table.block, sheets);
  if (isFault(cells)) return cells;
  const others = await otherTables(host, names, tableName);
  return isFault(others) ? others : { sheets, names, logbook: { table, cells, others } };
}
