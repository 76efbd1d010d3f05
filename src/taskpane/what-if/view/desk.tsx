/** What every part of the what-if task sees and may do. */
import { type TaskDesk, taskDesk } from "../../stepped/task-desk";
import type { Action } from "../reducer";
import type { View } from "../view-of";
import { whatIf } from "../what-if";

export interface Desk extends TaskDesk<typeof whatIf> {
  readonly view: View;
  readonly act: (action: Action) => void;
}

export const { DeskProvider, useDesk, useMark, Figure, Choose, Wants } = taskDesk<
  typeof whatIf,
  Desk
>(whatIf);
