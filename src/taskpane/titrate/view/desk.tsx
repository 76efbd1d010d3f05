/** What every part of a titration sees and may do. */
import { taskDesk } from "../../stepped/task-desk";
import type { StepId } from "../draft";
import type { NumberFieldId } from "../fields";
import { stepNames } from "../names";
import type { Before, BenchAction } from "../undo";
import type { View } from "../view-of";

export interface Desk {
  readonly view: View;
  readonly act: (action: BenchAction) => void;
  /** What the next undo takes back; undefined when there is nothing. */
  readonly undoes: Before | undefined;
}

export const { DeskProvider, useDesk, useMark, Figure, Wants } = taskDesk<
  NumberFieldId,
  Desk,
  StepId
>(stepNames);
