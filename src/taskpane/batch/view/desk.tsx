/** What every part of the batch task sees and may do. */
import { taskDesk } from "../../stepped/task-desk";
import type { StepId } from "../draft";
import type { NumberFieldId } from "../fields";
import { stepNames } from "../names";
import type { Action } from "../reducer";
import type { View } from "../view-of";

export interface Desk {
  readonly view: View;
  readonly act: (action: Action) => void;
}

export const { DeskProvider, useDesk, useMark, Figure, Wants } = taskDesk<
  NumberFieldId,
  Desk,
  StepId
>(stepNames);
