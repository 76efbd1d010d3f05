/** What is still wanted, each with the way to where it is typed. */
import { Button } from "@fluentui/react-components";
import type { StepId } from "../draft";
import { stepNames } from "../names";
import type { Want } from "../progress";
import { useMark } from "./desk";

export interface WantsProps {
  readonly title: string;
  readonly wants: readonly Want[];
  readonly onGo: (step: StepId) => void;
}

export function Wants({ title, wants, onGo }: WantsProps) {
  const inMark = useMark();
  if (wants.length === 0) return null;
  const steps = [...new Set(wants.map(({ step }) => step))];
  return (
    <section className="wants">
      <h3>{title}</h3>
      <ul>
        {wants.map(({ sentence }) => (
          <li key={sentence}>{inMark(sentence)}</li>
        ))}
      </ul>
      <div className="acts">
        {steps.map((step) => (
          <Button
            key={step}
            size="large"
            onClick={() => {
              onGo(step);
            }}
          >
            Go to {stepNames[step]}
          </Button>
        ))}
      </div>
    </section>
  );
}
