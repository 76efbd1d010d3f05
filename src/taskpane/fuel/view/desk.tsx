/** What every part of the fuel task sees and may do. */
import type { Batches } from "../../../workbook/planning/read-batches";
import { type TaskDesk, taskDesk } from "../../stepped/task-desk";
import type { Action, Draft } from "../draft";
import { fuel } from "../fuel";
import type { View } from "../view-of";

export interface Desk extends TaskDesk<typeof fuel> {
  readonly view: View;
  readonly act: (action: Action) => void;
  /** Another draft in place of this one. */
  readonly change: (how: (draft: Draft) => Draft) => void;
  /** On record; undefined while none is known. */
  readonly batches: Batches | undefined;
}

export const { DeskProvider, useDesk, useMark, Figure, Choose, Words, Wants } = taskDesk<
  typeof fuel,
  Desk
>(fuel);
