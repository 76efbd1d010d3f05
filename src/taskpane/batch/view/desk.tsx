/** What every part of the batch task sees and may do. */
import { type TaskDesk, taskDesk } from "../../stepped/task-desk";
import type { KeptLyeLot } from "../../../workbook/planning/bench/read-lye-lots";
import type { RecordedBatch } from "../../../workbook/planning/read-batches";
import type { LotInStore } from "../../../workbook/planning/read-store";
import type { BenchValues } from "../../../workbook/tables/bench";
import { batch } from "../batch";
import type { Action } from "../reducer";
import type { View } from "../view-of";

export interface Desk extends TaskDesk<typeof batch> {
  readonly view: View;
  readonly act: (action: Action) => void;
  /** What My bench says; empty where it says nothing. */
  readonly bench: BenchValues;
  /** Lye on the shelf, as the table LyeLots has it; empty where there is none. */
  readonly lyeLots: readonly KeptLyeLot[];
  /** What is left of each lot; empty where the workbook does not say. */
  readonly store: readonly LotInStore[];
  /** The batches on record, the latest first. */
  readonly batches: readonly RecordedBatch[];
}

export const { DeskProvider, useDesk, useMark, Figure, Choose, Words, Wants } = taskDesk<
  typeof batch,
  Desk
>(batch);
