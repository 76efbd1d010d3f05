/** What a titration still wants. */
import { Wants as AnyWants } from "../../stepped/wants";
import type { StepId } from "../draft";
import { stepNames } from "../names";
import type { Want } from "../progress";
import { useMark } from "./desk";

export interface WantsProps {
  readonly title: string;
  readonly wants: readonly Want[];
  readonly onGo: (step: StepId) => void;
}

export function Wants(props: WantsProps) {
  return <AnyWants {...props} names={stepNames} inMark={useMark()} />;
}
