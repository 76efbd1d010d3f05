/** The six steps along a burette: where one is, what is done, what is open. */
import { stepIds, type StepId } from "../draft";
import { stepNames } from "../names";
import { stateOf, type StepState } from "../progress";
import { useDesk } from "./desk";

const stateMarks: Record<StepState, string> = { done: "✓", "part done": "–", "to do": "" };

export function StepBar({ onGo }: { onGo: (step: StepId) => void }) {
  const { view } = useDesk();
  const here = view.draft.step;
  return (
    <nav aria-label="Steps of the titration">
      <ol className="step-bar">
        {stepIds.map((id, index) => {
          const state = stateOf(id, view, view.wants);
          return (
            <li key={id} className={state === "to do" ? "" : "is-filled"}>
              <button
                type="button"
                {...(id === here ? { "aria-current": "step" as const } : {})}
                aria-label={`${index + 1} ${stepNames[id]}, ${state}`}
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
          );
        })}
      </ol>
    </nav>
  );
}
