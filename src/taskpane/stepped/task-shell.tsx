/** A task that goes step by step: where one is, the step itself, the way on, and its cautions. */
import type { ReactNode } from "react";
import { StepBar, type StepState } from "./step-bar";
import { StepHeading } from "./step-heading";
import { askFor, nextOf } from "./wanted-field";
import { EnterGoesOn, WayOn } from "./way-on";

export interface TaskShellProps<Step extends string> {
  /** For a listener: "Steps of the titration". */
  readonly label: string;
  /** What each step is called, in their order. */
  readonly names: Readonly<Record<Step, string>>;
  readonly here: Step;
  readonly stateOf: (step: Step) => StepState;
  readonly onGo: (step: Step) => void;
  /** Opened by hand: then the focus comes to it. */
  readonly takesFocus?: boolean;
  /** Another each time it was asked for from another task. */
  readonly turn?: number | undefined;
  /** What each step shows. */
  readonly parts: Readonly<Record<Step, () => ReactNode>>;
  /** Steps in which Enter has nothing else to do, and goes on. */
  readonly enterGoesOnAt?: readonly Step[];
  /** Steps that the way on passes over once nothing is wanted in them: the bar leads to them still. */
  readonly passedWhenDone?: readonly Step[];
  /** Why the step after this one has nothing to offer yet. */
  readonly waits?: string | undefined;
  readonly top?: ReactNode;
  readonly below?: ReactNode;
  /** A class of its own. */
  readonly look?: string;
}

export function TaskShell<Step extends string>(props: TaskShellProps<Step>) {
  const { label, names, here, stateOf, onGo, takesFocus = false, parts, top, below, look } = props;
  const { passedWhenDone = [] } = props;
  const ids = Object.keys(names) as Step[];
  const at = ids.indexOf(here);
  const isPassed = (step: Step) => passedWhenDone.includes(step) && stateOf(step) === "done";
  const next = ids.slice(at + 1).find((step) => !isPassed(step));
  const steps = ids.map((id) => ({ id, name: names[id], state: stateOf(id) }));
  /** To what is open here, or to the next field that wants something; from the last one to the next step. */
  const goOn = (): void => {
    const { activeElement } = document;
    const part = activeElement?.closest(".task");
    const field = part && activeElement ? nextOf(part, activeElement) : undefined;
    if (field) askFor(field);
    else if (next !== undefined && props.waits === undefined) onGo(next);
  };
  return (
    <div className={look === undefined ? "task" : `task ${look}`}>
      {top}
      <StepBar label={label} steps={steps} here={here} onGo={onGo} />
      <StepHeading
        name={names[here]}
        at={at}
        of={ids.length}
        takesFocus={takesFocus}
        turn={props.turn}
        onEnter={goOn}
      />
      {props.enterGoesOnAt?.includes(here) === true ? (
        <EnterGoesOn onEnter={goOn}>{parts[here]()}</EnterGoesOn>
      ) : (
        parts[here]()
      )}
      <WayOn back={ids[at - 1]} next={next} names={names} onGo={onGo} waits={props.waits} />
      {below}
    </div>
  );
}
