/** The steps of a task along a burette: where one is, what is done, what is open. */
import "./stepped.css";
import type { CSSProperties } from "react";

export type StepState = "done" | "part done" | "to do";

const stateMarks: Record<StepState, string> = { done: "✓", "part done": "–", "to do": "" };

export interface BarStep<Id extends string> {
  readonly id: Id;
  readonly name: string;
  readonly state: StepState;
}

export interface StepBarProps<Id extends string> {
  /** For a listener: "Steps of the titration". */
  readonly label: string;
  readonly steps: readonly BarStep<Id>[];
  readonly here: Id;
  readonly onGo: (step: Id) => void;
}

export function StepBar<Id extends string>({ label, steps, here, onGo }: StepBarProps<Id>) {
  return (
    <nav aria-label={label}>
      <ol className="step-bar" style={{ "--steps": steps.length } as CSSProperties}>
        {steps.map(({ id, name, state }, index) => (
          <li key={id} className={state === "to do" ? "" : "is-filled"}>
            <button
              type="button"
              {...(id === here ? { "aria-current": "step" as const } : {})}
              aria-label={`${index + 1} ${name}, ${state}`}
              onClick={() => {
                onGo(id);
              }}
            >
              <span aria-hidden="true">{index + 1}</span>
              <span className="step-mark" aria-hidden="true">
                {stateMarks[state]}
              </span>
            </button>
          </li>
        ))}
      </ol>
    </nav>
  );
}
