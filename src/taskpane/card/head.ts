/** What stands above the steps, on the screen and on paper: whose card it is, and what its dose rests on. */
import { computed } from "../../core/exact/exact";
import { numberOf, type RecordedBatch } from "../../workbook/planning/read-batches";
import { valueText } from "../../workbook/planning/preview-text";
import { acidValueHeading, halfWidthHeading, worthColumn } from "../../workbook/tables/batch-cells";
import { dayOfSheet } from "../widgets/day";
import { doubtText } from "../widgets/shown-number";
import { nameOf } from "./card";

/** A line each; what the row does not say is left out. */
export function headOf(batch: RecordedBatch): readonly string[] {
  const day = batch.date === undefined ? "" : `, ${dayOfSheet(batch.date)}`;
  const acid = numberOf(batch.under(acidValueHeading));
  const half = numberOf(batch.under(halfWidthHeading));
  const [worth = "", note = ""] = [worthColumn, "Note"].map((heading) =>
    valueText(batch.under(heading)),
  );
  const of = acid === undefined ? "" : ` ${doubtText(computed(acid), half, 2)} mg KOH/g`;
  return [
    `Batch ${nameOf(batch) || "without a number"}${day}`,
    of === "" ? "" : `Acid value of the oil${of}${worth === "" ? "" : `: ${worth}`}`,
    note,
  ].filter((line) => line !== "");
}
