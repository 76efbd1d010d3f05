/** A change and its press: planned, shown, agreed to, written. */
import { PlannedChange, type PlannedChangeProps } from "./planned-change";
import { type Change, usePlanned } from "./use-planned";

export interface PlannedPressProps extends Omit<PlannedChangeProps, "planned"> {
  readonly change: Change;
}

export const PlannedPress = ({ change, ...shown }: PlannedPressProps) => (
  <PlannedChange planned={usePlanned(change)} {...shown} />
);
