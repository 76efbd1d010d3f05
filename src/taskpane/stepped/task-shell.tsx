/** A task that goes step by step: where one is, the step itself, the way on, and its cautions. */
import type { ReactNode } from "react";
import { StepBar, type StepState } from "./step-bar";
import { StepHeading } from "./step-heading";
import { EnterGoesOn, WayOn } from "./way-on";

export interface TaskShellProps<Step extends string> {
  /** For a listener: "Steps of the titration". */
  readonly label: string;
  /** What each step is called, in their order. */
  readonly names: Readonly<Record<Step, string>>;
  readonly here: Step;
  readonly stateOf: (step: Step) => StepState;
  readonly onGo: (step: Step) => void;
  /** Opened by hand: then its heading takes the focus. */
  readonly takesFocus?: boolean;
  /** What each step shows. */
  readonly parts: Readonly<Record<Step, () => ReactNode>>;
  /** Steps in which Enter has nothing else to do, and goes on. */
  readonly enterGoesOnAt?: readonly Step[];
  /** Why the step after this one has nothing to offer yet. */
  readonly waits?: string | undefined;
  readonly top?: ReactNode;
  readonly below?: ReactNode;
  /** A class of its own. */
  readonly look?: string;
}

export function TaskShell<Step extends string>(props: TaskShellProps<Step>) {
  const { label, names, here, stateOf, onGo, takesFocus = false, parts, top, below, look } = props;
  const ids = Object.keys(names) as Step[];
  const at = ids.indexOf(here);
  const next = ids[at + 1];
  const steps = ids.map((id) => ({ id, name: names[id], state: stateOf(id) }));
  return (
    <div className={look === undefined ? "task" : `task ${look}`}>
      {top}
      <StepBar label={label} steps={steps} here={here} onGo={onGo} />
      <StepHeading name={names[here]} at={at} of={ids.length} takesFocus={takesFocus} />
      {props.enterGoesOnAt?.includes(here) === true ? (
        <EnterGoesOn
          onEnter={() => {
            if (next !== undefined) onGo(next);
          }}
        >
          {parts[here]()}
        </EnterGoesOn>
      ) : (
        parts[here]()
      )}
      <WayOn steps={ids} names={names} here={here} onGo={onGo} waits={props.waits} />
      {below}
    </div>
  );
}
