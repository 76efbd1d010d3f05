/** What every part of a titration sees and may do. */
import { type TaskDesk, taskDesk } from "../../stepped/task-desk";
import type { BenchValues } from "../../../workbook/tables/bench";
import { titration } from "../titration";
import type { Before, BenchAction } from "../undo";
import type { View } from "../view-of";

export interface Desk extends TaskDesk<typeof titration> {
  readonly view: View;
  readonly act: (action: BenchAction) => void;
  /** What My bench says; empty where it says nothing. */
  readonly bench: BenchValues;
  /** What it filled in of what was empty, in words. */
  readonly filled: readonly string[];
  /** What the next undo takes back; undefined when there is nothing. */
  readonly undoes: Before | undefined;
}

export const { DeskProvider, useDesk, useMark, Figure, Choose, Words, Wants } = taskDesk<
  typeof titration,
  Desk
>(titration);
