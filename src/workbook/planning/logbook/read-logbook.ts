/** Reads what a plan needs to know. Reads only. */
import {
  type Block,
  type Cells,
  type Fault,
  fault,
  type Host,
  isFault,
  type Names,
  type Sheets,
  type Table,
} from "../../../sheet/port";
import { asked } from "../asked";
import { read } from "../read";
import type { Snapshot } from "../snapshot";

/** More rows below a table are not looked at. */
const mostBelow = 200;

/** The table's cells, and those below it down to the first row that is surely empty. */
async function cellsOf(host: Host, block: Block, { sheets }: Sheets): Promise<Cells | Fault> {
  const used = sheets.find(({ name }) => name === block.sheet)?.used;
  const end = block.row + block.rows;
  const below = used ? Math.max(0, Math.min(used.row + used.rows - end, mostBelow)) : 0;
  const wanted = { ...block, rows: block.rows + below + 1 };
  const found = await read(host, [{ ask: "cells", block: wanted }]);
  return isFault(found) ? found : found[0];
}

async function otherTables(host: Host, { tables }: Names, name: string): Promise<Table[] | Fault> {
  const others = tables.filter((each) => each.toLowerCase() !== name.toLowerCase());
  if (others.length === 0) return [];
  const found = await read(
    host,
    others.map((each) => ({ ask: "table", name: each }) as const),
  );
  if (isFault(found)) return found;
  return found.filter((each) => each.kind === "table");
}

export async function readLogbook(host: Host, tableName: string): Promise<Snapshot | Fault> {
  const can = await asked(() => host.capabilities());
  if (isFault(can)) return can;
  if (!can.canWrite) return fault("read-only");
  const found = await read(host, [
    { ask: "sheets" },
    { ask: "names" },
    { ask: "table", name: tableName },
  ]);
  if (isFault(found)) return found;
  const [sheets, names, table] = found;
  const others = await otherTables(host, names, tableName);
  if (isFault(others)) return others;
  if (table.kind === "nothing") return { sheets, names, others, logbook: undefined };
  const cells = await cellsOf(host, table.block, sheets);
  if (isFault(cells)) return cells;
  return { sheets, names, others, logbook: { table, cells, others } };
}
