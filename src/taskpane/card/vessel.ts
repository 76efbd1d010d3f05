/** What goes into the vessel of a batch on record, against what it holds: oil weighed fills it, too. */
import { oilLitres } from "../../core/batch/oil-mass";
import { computed, exact, type Exact } from "../../core/exact/exact";
import { isProblem } from "../../core/problem/problem";
import { as } from "../../core/quantity/quantity";
import { oilNamed, oilNotNamed } from "../../core/reference/oils";
import type { BenchValues } from "../../workbook/tables/bench";
import { countedValue, type CardAmount, cardAmounts } from "../../workbook/card/amounts";
import { numberOf, type RecordedBatch } from "../../workbook/planning/read-batches";
import type { RecordedLot } from "../../workbook/planning/read-lots";
import { vesselWords } from "../bench/vessel-words";
import type { DecimalMark } from "../widgets/typed-number";

/** By volume where it was measured so; else by the density of the first lot's oil, as the row's formulas have it. */
function litresOf(
  { parts }: CardAmount,
  batch: RecordedBatch,
  lots: readonly RecordedLot[],
): Exact | undefined {
  const [measured] = parts.filter(({ counted }) => counted === "L");
  if (measured) return countedValue(measured);
  const [weighed] = parts.filter(({ counted }) => counted === "kg");
  if (weighed === undefined) return undefined;
  const first = String(batch.oils[0]?.lot ?? "");
  const oil = lots.find(({ lot }) => String(lot) === first)?.oil ?? "";
  const at = numberOf(batch.under("Oil temperature C"));
  const found = oilLitres(
    as("kg", countedValue(weighed)),
    oilNamed(oil) ?? oilNotNamed,
    at === undefined ? undefined : as("C", computed(at)),
  );
  return isProblem(found) ? undefined : found;
}

/** @returns a sentence where it does not fit; undefined where it does, or where nobody can tell */
export function tooMuchOf(
  batch: RecordedBatch,
  lots: readonly RecordedLot[],
  bench: BenchValues,
  mark: DecimalMark,
): string | undefined {
  const filling = (cardAmounts(batch) ?? []).filter(({ weighs }) => weighs !== "lye");
  const litres = filling.map((each) => litresOf(each, batch, lots));
  if (litres.length === 0 || litres.some((each) => each === undefined)) return undefined;
  const all = litres.reduce<Exact>((sum, each) => (each ? sum.plus(each) : sum), exact(0));
  return vesselWords(all, bench, mark);
}
