/** A batch record as what is typed into its row, by heading. Only what is filled in. */
import { type Exact, isExact } from "../../core/exact/exact";
import type { BookValue } from "../../sheet/book";
import { asIfPure } from "../tables/batches";
import type { BatchRecord } from "./batch-record";
import type { RowValue } from "./row-values";

const columns = (record: BatchRecord): [string, BookValue | Exact | undefined][] => [
  ["Date", record.date],
  ["Batch", record.batch],
  ["Lots", record.lot],
  ["Amount", record.amount],
  ["Unit", record.unit],
  ["Base", record.base],
  ["Lye lot", record.lyeLot],
  ["Assay %", record.assay],
  ["Charge %", record.charge],
  ["Note", record.note],
  ["Methanol ratio", record.ratio],
  ["Allowed FFA %", record.limitFfa],
  ["Oil at C", record.temperature],
  ["Second lot", record.second?.lot],
  ["Second lot %", record.second?.percent],
  ["Titrant lye", record.isTitrantAsIfPure ? asIfPure : undefined],
  ["Water %", record.water],
];

export const batchRowValues = (record: BatchRecord): RowValue[] =>
  columns(record).flatMap(([heading, given]) =>
    given === undefined || given === ""
      ? []
      : [{ heading, value: isExact(given) ? given.toNumber() : given }],
  );
