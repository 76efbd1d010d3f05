/** The batches on record, as the tables `Batches` and `Blends` have them. Reads only. */
import { exact } from "../../core/exact/exact";
import { type CellContent, type Fault, type Host, isFault } from "../../sheet/port";
import type { BookValue } from "../../sheet/book";
import { batchesName, blendsName } from "../tables/batch-cells";
import { wentHeadings } from "../tables/went";
import { rowsUnder, type Under } from "./headings";
import { valueText } from "./preview-text";
import { readTable } from "./read";

export interface BatchOil {
  readonly lot: BookValue;
  /** As it was typed; undefined where the row says only a share of the mass. */
  readonly amount: { readonly value: number; readonly unit: string } | undefined;
  readonly kilograms: number | undefined;
  /** Its share of the mass where the row names a second lot, %. */
  readonly percent: number | undefined;
  readonly from: "Batches" | "Blends";
}

export interface RecordedBatch {
  /** The sheet's row, from 1. */
  readonly row: number;
  /** Its number or name, as it stands there. */
  readonly batch: BookValue;
  readonly date: number | undefined;
  readonly unit: string;
  readonly oils: readonly BatchOil[];
  readonly base: string;
  readonly lyeLot: string;
  /** Other rows of the sheet that are called so too, from 1. */
  readonly alike: readonly number[];
  /** What a column of the row shows. */
  readonly under: Under;
}

/** A figure, or undefined where its cell shows none. */
export const numberOf = (value: CellContent): number | undefined =>
  typeof value === "number" ? value : undefined;
const flat = (value: CellContent): string => valueText(value).trim().toLowerCase();
const value = (content: CellContent): BookValue => (typeof content === "object" ? "" : content);

const amountOf = (under: Under): BatchOil["amount"] => {
  const amount = numberOf(under("Amount"));
  return amount === undefined
    ? undefined
    : { value: amount, unit: valueText(under("Unit")).trim() };
};

const hundred = 100;
/** As the sheet's own formula has it. */
const shareOf = (kilograms: number | undefined, percent: number): number | undefined =>
  kilograms === undefined ? undefined : exact(kilograms).times(percent).div(hundred).toNumber();

function oilsOf(under: Under, blended: readonly Under[]): BatchOil[] {
  const kilograms = numberOf(under("Oil kg"));
  if (blended.length > 0) {
    return blended.map((of) => ({
      lot: value(of("Lot")),
      amount: amountOf(of),
      kilograms: numberOf(of("Oil kg")),
      percent: undefined,
      from: "Blends",
    }));
  }
  const lot = value(under("Lots"));
  const second = value(under("Second lot"));
  if (second === "") {
    return [{ lot, amount: amountOf(under), kilograms, percent: undefined, from: "Batches" }];
  }
  const percent = numberOf(under("Second lot %")) ?? 0;
  const part = (of: BookValue, share: number): BatchOil => ({
    lot: of,
    amount: undefined,
    kilograms: shareOf(kilograms, share),
    percent: share,
    from: "Batches",
  });
  return [part(lot, hundred - percent), part(second, percent)];
}

export interface Batches {
  /** The latest first. */
  readonly rows: readonly RecordedBatch[];
  /** Of the columns that say how it went, those the table has. */
  readonly wentColumns: readonly string[];
}

/** @returns undefined when there is no such table */
export async function readBatches(host: Host): Promise<Batches | undefined | Fault> {
  const found = await readTable(host, batchesName);
  if (found === undefined || isFault(found)) return found;
  const blends = await readTable(host, blendsName);
  if (isFault(blends)) return blends;
  const lots = blends ? rowsUnder(blends.table.headings, blends.values.slice(1)) : [];
  const { table, values } = found;
  const all = rowsUnder(table.headings, values.slice(1));
  const rows = all.flatMap((under, at): RecordedBatch[] => {
    const name = flat(under("Batch"));
    if (name === "" && flat(under("Lots")) === "") return [];
    const blended = name === "" ? [] : lots.filter((of) => flat(of("Batch")) === name);
    return [
      {
        row: table.block.row + at + 2,
        batch: value(under("Batch")),
        date: numberOf(under("Date")),
        unit: valueText(under("Unit")).trim(),
        oils: oilsOf(under, blended),
        base: valueText(under("Base")).trim(),
        lyeLot: valueText(under("Lye lot")).trim(),
        alike: all.flatMap((other, place) =>
          name !== "" && place !== at && flat(other("Batch")) === name
            ? [table.block.row + place + 2]
            : [],
        ),
        under,
      },
    ];
  });
  const has = (heading: string): boolean =>
    table.headings.some((each) => each.trim().toLowerCase() === heading.toLowerCase());
  return { rows: rows.reverse(), wentColumns: wentHeadings.filter(has) };
}
