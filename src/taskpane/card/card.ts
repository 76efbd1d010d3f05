/** A batch on record as its card: what is weighed, in this person's units, or why there is no card. */
import { shownIn } from "../../core/card/shown";
import type { Weighed } from "../../core/card/steps";
import { type CardUnits, cardUnitsFor, type Form, formsOf, readForm } from "../../core/card/units";
import { amountUnitNamed } from "../../core/quantity/units";
import { cardAmounts, countedValue, type Part } from "../../workbook/card/amounts";
import type { RecordedBatch } from "../../workbook/planning/read-batches";
import { dayOfSheet } from "../widgets/day";

export interface AmountShown {
  readonly id: string;
  readonly weighs: Weighed;
  readonly what: string;
  /** In large. */
  readonly figure: string;
  /** The same in other units, in small. */
  readonly also: readonly string[];
  /** What is typed as really weighed: in the unit in large, of its part. */
  readonly scale: { readonly form: Form; readonly part: Part };
}

export const nameOf = ({ batch }: RecordedBatch): string => String(batch).trim();

/** Under which its ticks are kept: a number may be used again another year, or by mistake on one day. */
export const cardOf = (batch: RecordedBatch): string =>
  [String(batch.date ?? ""), nameOf(batch), ...(batch.alike.length > 0 ? [batch.row] : [])].join(
    "/",
  );

/** "B-118, 30 Sep": what it is chosen by. */
export const batchWords = (batch: RecordedBatch): string =>
  [
    nameOf(batch) || "no number",
    batch.date === undefined ? "" : dayOfSheet(batch.date),
    batch.alike.length > 0 ? `row ${String(batch.row)}` : "",
  ]
    .filter((word) => word !== "")
    .join(", ");

/** Which of several rows of one number this card shows; undefined where there is but one. */
export const alikeWords = ({ batch, row, alike }: RecordedBatch): string | undefined =>
  alike.length === 0
    ? undefined
    : `This is row ${String(row)} of Batches. Another batch is called ${String(batch)} too: row ${alike.map(String).join(", ")}.`;

export const unitsOf = (batch: RecordedBatch, chosen: CardUnits | ""): CardUnits =>
  chosen === "" ? cardUnitsFor(amountUnitNamed(batch.unit)) : chosen;

/** @returns undefined while the row shows no dose */
export function amountsOf(
  batch: RecordedBatch,
  units: CardUnits,
): readonly AmountShown[] | undefined {
  return cardAmounts(batch)?.map(({ id, weighs, what, parts }) => {
    const ways = parts.flatMap((part) =>
      formsOf(units, part.counted).map((form) => ({ form, part })),
    );
    const [figure = "", ...also] = ways.map(({ form, part }) => shownIn(form, countedValue(part)));
    const [{ form, part }] = ways as [(typeof ways)[number]];
    // what is in large is what is weighed by
    const scale = { form: readForm(form, countedValue(part)), part };
    return { id, weighs, what, figure, also, scale };
  });
}
