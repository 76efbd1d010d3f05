/** Why a batch on record has no dose, and so no card, by what its row says. */
import { computed } from "../../core/exact/exact";
import { as } from "../../core/quantity/quantity";
import { usual } from "../../core/reference/defaults";
import { ffaAsOleic } from "../../core/titration/free-fatty-acid";
import { valueText } from "../../workbook/planning/preview-text";
import { numberOf, type RecordedBatch } from "../../workbook/planning/read-batches";
import { acidValueHeading } from "../../workbook/tables/batch-cells";
import { nameOf } from "./card";

export function noDoseWords(batch: RecordedBatch): string {
  const name = nameOf(batch) || `Row ${String(batch.row)} of Batches`;
  const acid = numberOf(batch.under(acidValueHeading));
  if (acid === undefined) return `${name}: no acid value yet, so no dose.`;
  const limit = numberOf(batch.under("Allowed FFA %"));
  const ffa = ffaAsOleic(as("mg KOH/g", computed(acid)));
  if (ffa.gt(limit ? computed(limit) : usual.limitFfa)) return `${name}: too much acid for a dose.`;
  const shown = valueText(batch.under("Catalyst g"));
  const shows = shown === "" ? "" : `, it shows ${shown}`;
  return `${name}: its row ${String(batch.row)} of Batches has no dose${shows}.`;
}
