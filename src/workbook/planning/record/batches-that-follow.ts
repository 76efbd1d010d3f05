/** Batches on record whose amounts would follow a titration that is about to be recorded. Reads only. */
import { type Fault, type Host, isFault } from "../../../sheet/port";
import type { TitrationRecord } from "../../record/titration-record";
import { batchesName, blendsName } from "../../tables/batch-cells";
import { rowsUnder } from "../headings";
import type { Remark } from "../plan";
import { readTable } from "../read";
import { remarkWords } from "../remark-wording";

const mark = (value: unknown): string =>
  typeof value === "object" ? "" : String(value).trim().toLowerCase();

/** A row of `Batches` goes by the last titration of its lot up to its own day. */
export async function batchesThatFollow(
  host: Host,
  record: TitrationRecord,
): Promise<Remark[] | Fault> {
  const found = await readTable(host, batchesName);
  if (found === undefined) return [];
  if (isFault(found)) return found;
  const mixed = await readTable(host, blendsName);
  if (isFault(mixed)) return mixed;
  const lot = mark(record.lot);
  const ofBlends = new Set(
    (mixed ? rowsUnder(mixed.table.headings, mixed.values.slice(1)) : [])
      .filter((under) => mark(under("Lot")) === lot)
      .map((under) => mark(under("Batch"))),
  );
  const names = rowsUnder(found.table.headings, found.values.slice(1)).flatMap((under) => {
    const day = under("Date");
    const isOfLot =
      ["Lots", "Second lot"].some((heading) => mark(under(heading)) === lot) ||
      ofBlends.has(mark(under("Batch")));
    const isBefore = typeof day === "number" && Math.floor(day) < Math.floor(record.date);
    const name = under("Batch");
    if (!isOfLot || isBefore || lot === "") return [];
    return [typeof name === "object" || name === "" ? "without a number" : String(name)];
  });
  if (names.length === 0) return [];
  const sentence = remarkWords.batchesFollow(names, record.lot);
  return [{ sentence, confirm: "batches follow", agreeing: "Let them follow" }];
}
