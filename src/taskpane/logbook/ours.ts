/** The workbook's own tables, which are no strangers': they are checked where they are recorded. */
import { type Block, type Host, isFault } from "../../sheet/port";
import type { TablePlace } from "../../adopt/recognising/find-tables";
import { isOurTable } from "../../workbook/tables/ours";

/** Where they stand; none where the program does not say. */
export async function ourBlocks(host: Host): Promise<readonly Block[]> {
  const names = await host.read([{ ask: "names" }]);
  if (isFault(names)) return [];
  const [found] = names;
  if (found?.kind !== "names") return [];
  if (found.tables.length === 0) return [];
  const tables = await host.read(found.tables.map((name) => ({ ask: "table", name }) as const));
  if (isFault(tables)) return [];
  return tables.flatMap((each) => (each.kind === "table" && isOurTable(each) ? [each.block] : []));
}

export const isWithin = (
  sheet: string,
  { headingRow, firstColumn }: TablePlace,
  blocks: readonly Block[],
): boolean =>
  blocks.some(
    (block) =>
      block.sheet === sheet &&
      headingRow >= block.row &&
      headingRow < block.row + block.rows &&
      firstColumn >= block.column &&
      firstColumn < block.column + block.columns,
  );
