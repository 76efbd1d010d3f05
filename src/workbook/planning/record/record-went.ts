/** How a batch went, into its own row of `Batches`: read, plan, agree, write, read back. */
import { cellAt } from "../../../sheet/address";
import { andList } from "../../../sheet/and-list";
import { counted } from "../../../sheet/counted";
import { type CellContent, fault, type Host, isFault } from "../../../sheet/port";
import type { BookValue } from "../../../sheet/book";
import { refused } from "../../../sheet/refusal";
import { batchesName } from "../../tables/batch-cells";
import { went, type WentId, wentIds } from "../../tables/went";
import { carryOut } from "../carry-out";
import { finished } from "../finished";
import { placeOf } from "../headings";
import type { Confirmed, Plan, RecordOutcome, Refusal, Remark } from "../plan";
import { plannedCell } from "../planned-cell";
import { valueText } from "../preview-text";
import { readTable } from "../read";
import { refusal } from "../refusal";
import type { Pause } from "../settle";

export interface WentRecord {
  /** The sheet's row of the batch, from 1, and the batch's name there. */
  readonly row: number;
  readonly batch: BookValue;
  /** What is left out stays as it is. */
  readonly values: Readonly<Partial<Record<WentId, BookValue>>>;
  /** Lots beside weighed ones for which nothing was typed: in `values` they are as worked out. */
  readonly asWorkedOut: readonly string[];
  /** Figures far from what was planned, a sentence each: written once somebody agrees. */
  readonly doubts: readonly string[];
}

/** The unit of each, and what it is of. */
const saidAs: Readonly<Record<WentId, readonly [unit: string, of: string]>> = {
  weighed: [" g", " of lye"],
  methanol: [" L", " of methanol"],
  oil: [" kg", " of oil"],
  litres: [" L", " of fuel"],
  minutes: [" minutes", " to settle"],
  washes: [" washes", ""],
  trial: ["", " in the methanol trial"],
  seen: ["", ""],
};

const mostDigits = 6;
const short = (value: CellContent | undefined): string =>
  typeof value === "number"
    ? String(Number(value.toPrecision(mostDigits)))
    : valueText(value ?? "");

/** What stands there, and what would: one of the two is kept. */
function replacing(id: WentId, now: CellContent | undefined, next: BookValue): Remark {
  const [unit, of] = saidAs[id];
  const held = `${short(now)}${unit}`;
  const replacement = id === "washes" ? short(next) : `${short(next)}${unit}`;
  return {
    sentence: `The logbook says ${held}${of}. Replace it with ${replacement}?`,
    confirm: `replaced: ${id}`,
    agreeing: `Replace ${held}`,
    keeping: { words: `Keep ${held}`, id },
  };
}

/** What recording it would do. Reads, never writes. */
export async function planWent(host: Host, record: WentRecord): Promise<Plan | Refusal> {
  const found = await readTable(host, batchesName);
  if (isFault(found)) return refusal(found);
  if (found === undefined) return refusal(fault("failed", batchesName));
  const { table, values } = found;
  const { block, headings } = table;
  const at = record.row - 1 - block.row;
  const named = values[at]?.[placeOf("Batch", headings) ?? -1];
  if (named !== record.batch) return refused("The rows of Batches have moved: look again.");
  const given = wentIds.filter((id) => record.values[id] !== undefined);
  const missing = given.filter((id) => placeOf(went[id], headings) === undefined);
  const replaced: Remark[] = [];
  const cells = given.flatMap((id) => {
    const column = placeOf(went[id], headings);
    const value = record.values[id] ?? "";
    const now = column === undefined ? "" : valueText(values[at]?.[column] ?? "");
    if (column === undefined || now === valueText(value)) return [];
    const place = cellAt(block.sheet, block.row + at, block.column + column);
    const content = { kind: "value", value } as const;
    if (now !== "") replaced.push(replacing(id, values[at]?.[column], value));
    return [plannedCell({ block: place, heading: went[id], now, content, isLost: now !== "" })];
  });
  const row = { ...block, row: block.row + at, rows: 1 };
  return finished({
    what: "record how it went",
    where: `row ${String(record.row)} of the sheet ${block.sheet}`,
    summary:
      cells.length === 0
        ? "The row says all of this already."
        : `${counted(cells.length, "cell")} of row ${String(record.row)} on the sheet ${block.sheet}.`,
    cells,
    makes: [],
    remarks: [
      ...record.doubts.map((sentence) => ({
        sentence,
        confirm: `far: ${sentence}`,
        agreeing: "It is right",
      })),
      ...(record.asWorkedOut.length === 0
        ? []
        : [
            {
              sentence: `Nothing is typed for ${andList(record.asWorkedOut)}: taken as worked out.`,
            },
          ]),
      ...(missing.length === 0
        ? []
        : [
            {
              sentence: `The table has no column for ${missing.map((id) => went[id]).join(", ")}: that is not recorded.`,
              confirm: "column-missing",
              agreeing: "Record it without that",
            },
          ]),
      ...replaced,
    ],
    block: row,
    table: table.name,
    steps: cells.map(({ block: place, content }) => ({
      do: "set-cells",
      block: place,
      contents: [[content]],
    })),
  });
}

/** Plans anew and writes only what was agreed to. */
export const recordWent = (
  host: Host,
  record: WentRecord,
  confirmed: Confirmed | undefined,
  pause?: Pause,
): Promise<RecordOutcome> =>
  carryOut(
    host,
    `Record how batch ${String(record.batch)} went`,
    () => planWent(host, record),
    confirmed,
    pause,
  );
