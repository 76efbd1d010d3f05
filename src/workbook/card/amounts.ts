/** What is weighed or measured for a batch on record, each amount with the cell it stands in. */
import { type Exact, exact } from "../../core/exact/exact";
import type { Weighed } from "../../core/card/steps";
import type { Counted } from "../../core/card/units";
import { amountUnitNamed } from "../../core/quantity/units";
import type { BookValue } from "../../sheet/book";
import { type BatchOil, numberOf, type RecordedBatch } from "../planning/read-batches";

/** Where a figure stands: a column of the batch's own row, or of its lot's row in `Blends`. */
export interface Source {
  readonly heading: string;
  /** Undefined: the batch's own row. */
  readonly lot: BookValue | undefined;
  /** The figure times this is counted in litres, kilograms, grams. */
  readonly times: Exact;
}

export interface Part {
  readonly counted: Counted;
  /** As it stands in its cell. */
  readonly value: Exact;
  readonly source: Source;
}

export interface CardAmount {
  readonly id: string;
  readonly weighs: Weighed;
  readonly what: string;
  /** One, or the same amount by volume and by mass. */
  readonly parts: readonly Part[];
}

const one = exact(1);

const part = (
  counted: Counted,
  value: number | undefined,
  heading: string,
  more: Partial<Source> = {},
): Part[] =>
  value === undefined
    ? []
    : [{ counted, value: exact(value), source: { heading, lot: undefined, times: one, ...more } }];

function oilParts(batch: RecordedBatch, oil: BatchOil): Part[] {
  const lot = oil.from === "Blends" ? oil.lot : undefined;
  if (oil.percent !== undefined) {
    const all = numberOf(batch.under("Oil kg"));
    return part("kg", all, "Oil kg", { times: exact(oil.percent).div(100) });
  }
  const unit = amountUnitNamed(oil.amount?.unit ?? "");
  const measured =
    unit?.measures === "volume"
      ? part("L", oil.amount?.value, "Amount", { lot, times: unit.factor })
      : [];
  return [...measured, ...part("kg", oil.kilograms, "Oil kg", { lot })];
}

/** Methanol less what a methoxide solution brings, where the table has that column. */
const methanolHeading = ({ under }: RecordedBatch): string =>
  under("Methanol to add L") === "" ? "Methanol L" : "Methanol to add L";

/** @returns undefined while one of them has no figure: no dose stands there */
export function cardAmounts(batch: RecordedBatch): readonly CardAmount[] | undefined {
  const { under, base, lyeLot } = batch;
  const methanol = methanolHeading(batch);
  const brings = numberOf(under("Methanol L")) !== numberOf(under(methanol));
  const amounts: CardAmount[] = [
    ...batch.oils.map((oil) => ({
      id: `oil ${String(oil.lot)}`,
      weighs: "oil" as const,
      what: `Oil, lot ${String(oil.lot)}`,
      parts: oilParts(batch, oil),
    })),
    {
      id: "methanol",
      weighs: "methanol",
      what: brings ? "Methanol to add" : "Methanol",
      parts: part("L", numberOf(under(methanol)), methanol),
    },
    {
      id: "lye",
      weighs: "lye",
      what: [base, lyeLot === "" ? "" : `lot ${lyeLot}`].filter((word) => word !== "").join(", "),
      parts: part("g", numberOf(under("Catalyst g")), "Catalyst g"),
    },
  ];
  return amounts.every(({ parts }) => parts.length > 0) ? amounts : undefined;
}

/** What an amount comes to, as it is counted: litres, kilograms, grams. */
export const countedValue = ({ value, source }: Part): Exact => value.times(source.times);
