/**
 * A batch under way: which lots, how much, what lye, as typed and picked. Plain data, so that it can be
 * kept and taken up again; the lots' acid values are not in it, since the workbook has them.
 */
import { usual } from "../../core/reference/defaults";
import { type Entered, firstEntered } from "../stepped/entered";
import { batch } from "./batch";

export interface ChosenLot {
  /** The lot's mark as text; `Titrations` may hold it as a number. */
  readonly lot: string;
  /** Its share of the mass as typed, %; the last lot takes what the others leave. */
  readonly share: string;
}

export const mostLots = 12;

export interface Draft extends Entered<typeof batch> {
  readonly version: 1;
  readonly lots: readonly ChosenLot[];
  /** Why the acid is not to be used yet, as it stood when "Use it all the same" was pressed; "" for never. */
  readonly usedAllTheSame: string;
  /** It stands in the workbook. */
  readonly isRecorded: boolean;
}

/** A fresh batch. After another it keeps the vessel and the lye, never the lots or the limit. */
export function newDraft(after?: Draft): Draft {
  const entered = firstEntered(batch, after);
  return {
    version: 1,
    ...entered,
    typed: after ? entered.typed : { ratio: usual.molarRatio.toString() },
    lots: [],
    usedAllTheSame: "",
    isRecorded: false,
  };
}
