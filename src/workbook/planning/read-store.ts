/** What is left of each lot of oil, as the table `Lots` says. Reads only. */
import { type Fault, type Host, isFault } from "../../sheet/port";
import { litresLeft, lotsName } from "../tables/lots";
import { rowsUnder } from "./headings";
import { valueText } from "./preview-text";
import { readTable } from "./read";

export interface LotInStore {
  /** Its mark as text. */
  readonly lot: string;
  /** L at 20 C; undefined where the table does not say it, or says it twice. */
  readonly litresLeft: number | undefined;
  /** Day it was collected, as a spreadsheet counts days. */
  readonly collected: number | undefined;
}

const number = (value: unknown): number | undefined =>
  typeof value === "number" ? value : undefined;

const isSame = (one: string, other: string): boolean => one.toLowerCase() === other.toLowerCase();

/**
 * In the order of the table, each lot once.
 * @returns undefined when there is no such table
 */
export async function readStore(host: Host): Promise<readonly LotInStore[] | undefined | Fault> {
  const found = await readTable(host, lotsName);
  if (found === undefined || isFault(found)) return found;
  const rows = rowsUnder(found.table.headings, found.values.slice(1)).flatMap((under) => {
    const lot = valueText(under("Lot")).trim();
    return lot === "" ? [] : [{ lot, under }];
  });
  return rows.flatMap(({ lot, under }, at) => {
    const same = rows.filter((each) => isSame(each.lot, lot));
    if (rows.findIndex((each) => isSame(each.lot, lot)) < at) return [];
    return [
      {
        lot,
        // of a mark that stands twice, each row takes off what both gave
        litresLeft: same.length > 1 ? undefined : number(under(litresLeft)),
        collected: number(under("Collected")),
      },
    ];
  });
}
