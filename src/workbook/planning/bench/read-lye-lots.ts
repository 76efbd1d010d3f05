/** The containers of lye on the shelf, as the table `LyeLots` has them. Reads only. */
import { exact } from "../../../core/exact/exact";
import { baseNamed } from "../../../core/reference/bases";
import { limits, misses } from "../../../core/reference/limits";
import { type CellContent, type Fault, type Host, isFault } from "../../../sheet/port";
import { lyeLotsTable } from "../../tables/lye-lots";
import { rowsUnder } from "../headings";
import { readTable } from "../read";

export interface KeptLyeLot {
  readonly base: string;
  readonly lot: string;
  /** %, in plain digits with a point. */
  readonly assay: string;
}

const text = (value: CellContent): string =>
  typeof value === "object" ? "" : String(value).trim();

const isAssay = (value: CellContent): value is number =>
  typeof value === "number" && misses(exact(value), limits.assay) === undefined;

/**
 * Rows that say lot, base and an assay that can be one, the last written first.
 * @returns none where there is no such table
 */
export async function readLyeLots(host: Host): Promise<readonly KeptLyeLot[] | Fault> {
  const found = await readTable(host, lyeLotsTable.name);
  if (isFault(found)) return found;
  if (found === undefined) return [];
  const rows = rowsUnder(found.table.headings, found.values.slice(1));
  return rows
    .flatMap((under): KeptLyeLot[] => {
      const lot = text(under("Lot"));
      const base = baseNamed(text(under("Base")))?.name;
      const assay = under("Assay %");
      return lot === "" || base === undefined || !isAssay(assay)
        ? []
        : [{ base, lot, assay: exact(assay).toFixed() }];
    })
    .reverse();
}
