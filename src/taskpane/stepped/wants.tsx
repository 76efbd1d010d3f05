/** What is still wanted, each with the way to where it is typed. */
import "./stepped.css";
import { Button } from "@fluentui/react-components";

export interface WantsProps<Id extends string> {
  readonly title: string;
  readonly wants: readonly { readonly step: Id; readonly sentence: string }[];
  readonly names: Readonly<Record<Id, string>>;
  readonly inMark: (text: string) => string;
  readonly onGo: (step: Id) => void;
}

export function Wants<Id extends string>({ title, wants, names, inMark, onGo }: WantsProps<Id>) {
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
            Go to {names[step]}
          </Button>
        ))}
      </div>
    </section>
  );
}
