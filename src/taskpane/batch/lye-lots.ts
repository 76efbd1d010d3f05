/**
 * Lots of lye, that of My bench, those of the table LyeLots and those of earlier batches: chosen by a press
 * rather than typed again.
 */
import type { BenchValues } from "../../workbook/tables/bench";
import { baseNamed } from "../../core/reference/bases";
import type { KeptLyeLot } from "../../workbook/planning/bench/read-lye-lots";
import { numberOf, type RecordedBatch } from "../../workbook/planning/read-batches";

export type LyeLot = KeptLyeLot;

/** More are not looked through at a bench. */
const most = 4;

/** That of My bench, where it says lot and assay. */
function benchLot(base: string, values: BenchValues): readonly LyeLot[] {
  const named = baseNamed(base)?.name;
  const [lot, assay] = named ? [values[`lot${named}`], values[`assay${named}`]] : [];
  return lot && assay ? [{ base, lot, assay }] : [];
}

/**
 * Of this base: that of My bench, then those of LyeLots, then those of batches, the latest first, each lot
 * with the assay it had last; without the one in hand.
 * @param batches the latest first
 * @param kept those of LyeLots, the latest first
 */
export function lyeLotsOf(
  batches: readonly RecordedBatch[],
  base: string,
  inHand: { readonly lot: string; readonly assay: string | undefined },
  bench: BenchValues = {},
  kept: readonly LyeLot[] = [],
): readonly LyeLot[] {
  const found = new Map<string, LyeLot>(
    benchLot(base, bench).map((each) => [each.lot.toLowerCase(), each]),
  );
  for (const each of kept) {
    const key = each.lot.toLowerCase();
    if (each.base === base && !found.has(key)) found.set(key, each);
  }
  for (const batch of batches) {
    const assay = numberOf(batch.under("Assay %"));
    const key = batch.lyeLot.toLowerCase();
    if (batch.base !== base || key === "" || assay === undefined || found.has(key)) continue;
    found.set(key, { base, lot: batch.lyeLot, assay: String(assay) });
  }
  return [...found.values()]
    .filter(
      ({ lot, assay }) =>
        lot.toLowerCase() !== inHand.lot.trim().toLowerCase() || assay !== inHand.assay,
    )
    .slice(0, most);
}

/** What a base that is chosen brings along: where My bench names no lot of it, the one put down or used last. */
export function lastUsed(
  batches: readonly RecordedBatch[],
  base: string,
  bench: BenchValues,
  kept: readonly LyeLot[] = [],
): LyeLot | undefined {
  const named = baseNamed(base)?.name;
  if (named === undefined || bench[`lot${named}`] || bench[`assay${named}`]) return undefined;
  return lyeLotsOf(batches, base, { lot: "", assay: undefined }, {}, kept)[0];
}
