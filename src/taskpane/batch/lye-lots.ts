/** Lots of lye that earlier batches were made with: chosen by a press rather than typed again. */
import { numberOf, type RecordedBatch } from "../../workbook/planning/read-batches";

export interface LyeLot {
  readonly base: string;
  readonly lot: string;
  /** %, in plain digits with a point. */
  readonly assay: string;
}

/** More are not looked through at a bench. */
const most = 4;

/**
 * Of this base, the latest first, each lot with the assay it had last; without the one in hand.
 * @param batches the latest first
 */
export function lyeLotsOf(
  batches: readonly RecordedBatch[],
  base: string,
  inHand: { readonly lot: string; readonly assay: string | undefined },
): readonly LyeLot[] {
  const found = new Map<string, LyeLot>();
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
