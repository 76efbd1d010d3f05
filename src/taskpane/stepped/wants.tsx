/** What is still wanted, each with the way to where it is typed. */
import "./stepped.css";
import { Button } from "@fluentui/react-components";
import { wantedMark } from "../widgets/wanted-mark";
import { askFor, openIn } from "./wanted-field";

export interface WantsProps<Id extends string> {
  readonly title: string;
  readonly wants: readonly { readonly step: Id; readonly sentence: string }[];
  readonly names: Readonly<Record<Id, string>>;
  readonly inMark: (text: string) => string;
  readonly onGo: (step: Id) => void;
  /** Nothing else can be done here: the hand comes to the first way out. */
  readonly isFirst?: boolean;
}

/** The step that was gone to says at its field what it lacks. */
const askThere = (from: Element): void => {
  const part = from.closest(".task");
  requestAnimationFrame(() => {
    const field = part && openIn(part);
    if (field) askFor(field);
  });
};

export function Wants<Id extends string>(props: WantsProps<Id>) {
  const { title, wants, names, inMark, onGo, isFirst = false } = props;
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
        {steps.map((step, place) => (
          <Button
            key={step}
            size="large"
            {...wantedMark(isFirst && place === 0)}
            onClick={({ currentTarget }) => {
              askThere(currentTarget);
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
