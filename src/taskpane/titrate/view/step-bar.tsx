/** The six steps of a titration, and how far each is. */
import { StepBar as Bar } from "../../stepped/step-bar";
import { stepIds, type StepId } from "../draft";
import { stepNames } from "../names";
import { stateOf } from "../progress";
import { useDesk } from "./desk";

export function StepBar({ onGo }: { onGo: (step: StepId) => void }) {
  const { view } = useDesk();
  const steps = stepIds.map((id) => ({
    id,
    name: stepNames[id],
    state: stateOf(id, view, view.wants),
  }));
  return <Bar label="Steps of the titration" steps={steps} here={view.draft.step} onGo={onGo} />;
}
